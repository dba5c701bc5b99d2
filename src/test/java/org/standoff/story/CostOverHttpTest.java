package org.standoff.story;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standoff.fixture.StandingFloor.place;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Ask;
import org.standoff.fixture.Batches;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.StandingFloor;

/** What would take too long is refused before it begins, alone or as a line of a batch. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class CostOverHttpTest {

  @Test
  void whatWouldTakeTooLongIsRefusedWithTheEstimate() {
    JsonNode problem = Ask.tree(bleed(299, 300).send().then().statusCode(422).extract().asString());
    assertThat(problem.path("type").asText()).isEqualTo("/problems/too-costly");
    assertThat(problem.path("code").asText()).isEqualTo("TOO_COSTLY");
    assertCost(problem, 15_276, 10_000);
    assertThat(problem.path("detail").asText())
        .isEqualTo(
            "This would take about 15276 ms of CPU time, and 10000 of 10000 ms are left to the"
                + " request.");
  }

  @Test
  void theLinesOfABatchShareWhatOneRequestMayTake() {
    List<JsonNode> lines =
        batch("/v1/floor/bleed", bleed(20, 25), bleed(20, 25), bleed(299, 300), bleed(1, 1));
    assertThat(lines)
        .extracting(line -> line.has("answer"))
        .containsExactly(true, true, false, true);
    assertThat(lines.get(2).path("line").asInt()).isEqualTo(3);
    // each of the first two: 500 cells in octaves at 0.17 ms, and 5000 octave paths at 30 ns
    assertCost(lines.get(2).path("problem"), 15_276, 9_829);
  }

  @Test
  void aLongDayAndAWideSearchAreRefusedToo() {
    List<Object> seats =
        IntStream.range(0, 300)
            .mapToObj(i -> (Object) Map.of("id", "e" + i, "position_m", at(i, 3.1)))
            .toList();
    Ask exposure =
        Ask.floor("exposure")
            .with("floor", floor(0, 300).node())
            .with("order", 6)
            .with("seats", seats)
            .with("day", List.of(Map.of("title", "all", "hours", 1)));
    assertTooCostly(exposure);
    Ask aim =
        Ask.floor("aim")
            .with("floor", floor(64, 30).node())
            .with("order", 0)
            .with("limits", Map.of("reach_m", 3));
    assertTooCostly(aim);
  }

  private static void assertTooCostly(Ask question) {
    JsonNode problem = Ask.tree(question.send().then().statusCode(422).extract().asString());
    assertThat(problem.path("code").asText()).isEqualTo("TOO_COSTLY");
    assertThat(problem.at("/cost/estimated_cpu_ms").asInt()).isGreaterThan(10_000);
  }

  private static void assertCost(JsonNode problem, int estimatedMs, int leftMs) {
    assertThat(problem.at("/cost/estimated_cpu_ms").asInt()).isEqualTo(estimatedMs);
    assertThat(problem.at("/cost/left_cpu_ms").asInt()).isEqualTo(leftMs);
    assertThat(problem.at("/cost/most_cpu_ms").asInt()).isEqualTo(10_000);
  }

  private static Ask bleed(int microphones, int sources) {
    return Ask.floor("bleed")
        .with("floor", floor(microphones, sources).node())
        .with("order", 0)
        .with("octaves", true)
        .with("remedies", Map.of("microphones", List.of()));
  }

  private static StandingFloor floor(int microphones, int sources) {
    return StandingFloor.in("boathouse/hall")
        .with(
            "microphones",
            IntStream.range(0, microphones)
                .mapToObj(
                    i ->
                        Map.of(
                            "id",
                            "m" + i,
                            "pattern",
                            "cardioid",
                            "azimuth_deg",
                            10,
                            "position_m",
                            at(i, 3.1),
                            "wanted",
                            List.of("s0")))
                .toList())
        .with(
            "sources",
            IntStream.range(0, sources)
                .mapToObj(
                    i -> Map.of("id", "s" + i, "source", "core/trumpet", "position_m", at(i, 5.5)))
                .toList());
  }

  private static Map<String, Double> at(int number, double yM) {
    return place(0.5 + 0.0433 * number, yM, 1.5);
  }

  private static List<JsonNode> batch(String path, Ask... lines) {
    return Batches.answered(
        path, String.join("\n", Stream.of(lines).map(line -> line.body().toString()).toList()));
  }
}
