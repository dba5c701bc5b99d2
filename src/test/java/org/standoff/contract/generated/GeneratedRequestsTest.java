package org.standoff.contract.generated;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.EmbeddedDatabaseResource;

/**
 * Sends to every operation of {@code openapi/standoff.yaml} what the description allows, what it
 * just forbids and what never should be sent, and holds every answer to the description. Seeded: a
 * failure comes again, and prints a line for a shell.
 */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class GeneratedRequestsTest {
  private static final int REQUESTS = Integer.getInteger("standoff.generated.requests", 21_000);
  private static final long SEED = Long.getLong("standoff.generated.seed", 20_261_125L);
  private static final int MOST_ANSWERED = Math.max(40, REQUESTS / 500);

  @Test
  void everyAnswerIsAsTheDescriptionSays() {
    Api api = Api.read(Path.of("openapi", "standoff.yaml"));
    Cases cases = new Cases(api, Credentials.NONE, SEED, MOST_ANSWERED);
    Judge judge = new Judge(api, "http://127.0.0.1:" + RestAssured.port);
    Run run = new Run(new OverRestAssured(), judge);
    List<Api.Operation> operations = api.operations();
    long t = System.nanoTime();
    List<List<Case>> single = new ArrayList<>();
    for (Api.Operation operation : operations) {
      single.add(cases.single(operation));
    }
    System.out.println("made in " + (System.nanoTime() - t) / 1e9);
    for (int i = 0; i < operations.size(); i++) {
      Api.Operation operation = operations.get(i);
      t = System.nanoTime();
      int before = run.count();
      run.send(cases.fixed(operation));
      double fixed = (System.nanoTime() - t) / 1e6;
      int f = run.count() - before;
      run.send(single.get(i));
      int s = run.count() - before - f;
      double one = (System.nanoTime() - t) / 1e6 - fixed;
      System.out.printf("%s: %d fixed %.2f ms each, %d single of %d %.2f ms each%n", operation.id(), f, fixed / f, s, single.get(i).size(), one / s);
    }
    System.out.println(run.sent());
    assertThat(run.findings()).isEmpty();
    assertThat(run.count()).isGreaterThanOrEqualTo(20_000);
  }
}
