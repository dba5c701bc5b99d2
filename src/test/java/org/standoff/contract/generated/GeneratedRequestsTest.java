package org.standoff.contract.generated;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.Iterator;
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
  private static final int MOST_ANSWERED = Math.max(20, REQUESTS / 1_000);
  private static final int AT_A_TIME = 200;
  private static final int AT_ONCE = 3;
  private static final Path REPORT = Path.of("target", "generated-requests", "findings.txt");

  @Test
  void everyAnswerIsAsTheDescriptionSays() throws IOException {
    Api api = Api.read(Path.of("openapi", "standoff.yaml"));
    Credentials credentials = OwnHouse.stand();
    Cases cases = new Cases(api, credentials, SEED, MOST_ANSWERED);
    String host = "http://127.0.0.1:" + RestAssured.port;
    try (OverHttp service = new OverHttp(host);
        Run run = new Run(service, new Judge(api, host), AT_ONCE)) {
      Lives lives = new Lives(api, credentials, SEED, run);
      lives.begin();
      readersFirst(api).forEach(operation -> run.send(cases.fixed(operation)));
      lives.all();
      Deque<Iterator<Case>> going = new ArrayDeque<>();
      readersFirst(api).stream()
          .filter(operation -> !operation.method().equals("DELETE"))
          .forEach(operation -> going.add(cases.changed(operation)));
      while (run.count() < REQUESTS && !going.isEmpty()) {
        run.send(someOfEach(going));
      }
      lives.end();
      assertThat(run.findings()).as(run.report(REPORT)).isEmpty();
      assertThat(run.count()).isGreaterThanOrEqualTo(Math.min(REQUESTS, 20_000));
      assertThat(run.sent()).containsKeys(Expected.ANSWERED, Expected.REFUSED, Expected.UNDERSTOOD);
      // what is valid breaks a rule now and then, but no service keeps its description by refusing
      // all
      assertThat(run.share(Expected.UNDERSTOOD)).isGreaterThan(0.5);
    }
  }

  /** Who takes away comes last: until then there is something to find. */
  private static List<Api.Operation> readersFirst(Api api) {
    List<String> order = List.of("GET", "POST", "PUT", "DELETE");
    return api.operations().stream()
        .sorted(Comparator.comparing(operation -> order.indexOf(operation.method())))
        .toList();
  }

  /** One of each operation by turns, so that an operation of few members is soon done. */
  private static List<Case> someOfEach(Deque<Iterator<Case>> going) {
    List<Case> some = new ArrayList<>();
    while (some.size() < AT_A_TIME && !going.isEmpty()) {
      Iterator<Case> next = going.poll();
      if (next.hasNext()) {
        some.add(next.next());
        going.add(next);
      }
    }
    return some;
  }
}
