package org.standoff.contract;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.standoff.fixture.EmbeddedDatabaseResource;

/** Who may do what with kit, cell by cell of {@link WhoMay}. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class WhoMayTest {

  private static final Path HANDBOOK = Path.of("DEVELOPERS.md");
  private static final Pattern IN_HANDBOOK =
      Pattern.compile("\\| operation \\| nobody \\|.*\n(\\|.*\n)+");

  @TestFactory
  Stream<DynamicContainer> everyCallerGetsWhatTheTableSays() {
    WhoMay table = WhoMay.table();
    return table.rows().stream()
        .map(
            row ->
                DynamicContainer.dynamicContainer(
                    row.operation(),
                    Stream.iterate(0, at -> at < table.callers().size(), at -> at + 1)
                        .map(
                            at ->
                                DynamicTest.dynamicTest(
                                    table.callers().get(at),
                                    () ->
                                        assertCell(
                                            row.operation(),
                                            table.callers().get(at),
                                            row.cells().get(at))))));
  }

  private static void assertCell(String operation, String caller, WhoMay.Cell cell) {
    KitWorld world = new KitWorld();
    try {
      world.prepare(operation);
      Response answer = world.send(operation, world.as(caller));
      assertThat(answer.statusCode()).as(answer.asString()).isEqualTo(cell.status());
      if (cell.status() >= 400) {
        assertThat(answer.contentType()).startsWith("application/problem+json");
      }
      if (cell.tells()) {
        // the feed keeps behind transactions that are still open, whoever's they are
        await()
            .untilAsserted(
                () ->
                    assertThat(world.send(operation, world.as(caller)).asString())
                        .contains(world.hold()));
      } else if (cell.hides()) {
        assertThat(answer.asString()).doesNotContain(world.hold());
      }
    } finally {
      world.clear();
    }
  }

  @Test
  void theTableHasARowForEveryOperationOnKit() {
    List<String> described =
        Described.served().operations().stream()
            .filter(
                operation ->
                    operation.path().matches("/v1/(houses|holds|events|availability)(/.*)?"))
            .map(Described.Operation::id)
            .toList();
    assertThat(WhoMay.table().rows().stream().map(WhoMay.Row::operation))
        .containsExactlyInAnyOrderElementsOf(described);
  }

  @Test
  void theHandbookShowsTheTable() throws IOException {
    String handbook = Files.readString(HANDBOOK);
    String now =
        IN_HANDBOOK
            .matcher(handbook)
            .replaceFirst(Matcher.quoteReplacement(WhoMay.table().markdown()));
    if (Boolean.getBoolean("standoff.rewrite")) {
      Files.writeString(HANDBOOK, now);
    }
    assertThat(Files.readString(HANDBOOK))
        .as("DEVELOPERS.md, rewritten by: mvn test -Dtest=WhoMayTest -Dstandoff.rewrite=true")
        .contains(WhoMay.table().markdown());
  }
}
