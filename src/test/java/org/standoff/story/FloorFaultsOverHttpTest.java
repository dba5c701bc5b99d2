package org.standoff.story;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.standoff.fixture.StandingFloor.VIOLIN_SPOT;
import static org.standoff.fixture.StandingFloor.place;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.fixture.Ask;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Sheets;
import org.standoff.fixture.StandingFloor;

/** Floors that can't be: a problem that says where, never a failure of ours. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class FloorFaultsOverHttpTest {
  private static final StandingFloor HALL =
      StandingFloor.in(Sheets.of(Sheets.HALL)).point("point", place(5, 5, 1.5));
  private static final StandingFloor DEMO = StandingFloor.demo("boathouse/hall", "violin", "drums");

  static Stream<Arguments> impossible() {
    return Stream.of(
        Arguments.of(
            "inside a source",
            DEMO.pattern("in", "omni", place(8.6, 3.9, 1.5), "violin"),
            List.of("/floor/microphones/0/position_m")),
        Arguments.of(
            "inside the body of a violin",
            DEMO.pattern("in", "omni", place(8.65, 3.85, 1.5), "violin"),
            List.of("/floor/microphones/0/position_m")),
        Arguments.of(
            "outside the room",
            HALL.pattern("out", "omni", place(15, 5, 1.5)),
            List.of("/floor/microphones/0/position_m")),
        Arguments.of(
            "a source outside the room and a microphone of its name too",
            HALL.point("far", place(5, 5, 50)).pattern("far", "omni", place(5, 6, 50)),
            List.of("/floor/sources/1/position_m", "/floor/microphones/0/position_m")),
        Arguments.of(
            "in a barrier",
            HALL.pattern("cut", "omni", place(8, 5, 1)).barrier("boathouse/gobo", 8, 5, 0),
            List.of("/floor/microphones/0/position_m")),
        Arguments.of(
            "two of one name",
            HALL.pattern("one", "omni", place(8, 5, 1)).pattern("one", "omni", place(9, 5, 1)),
            List.of("/floor/microphones/1/id")),
        Arguments.of("nothing listens", HALL, List.of("/floor/microphones")),
        Arguments.of(
            "nothing sounds",
            StandingFloor.in("core/hall").pattern("one", "omni", place(3, 3, 1)),
            List.of("/floor/sources")),
        Arguments.of(
            "no room",
            StandingFloor.in("core/hal")
                .point("p", place(5, 5, 1))
                .pattern("one", "omni", place(3, 3, 1)),
            List.of("/floor/room")),
        Arguments.of(
            "unknown names at once",
            DEMO.with(
                    "playing",
                    List.of(
                        Map.of("player", "drms"), Map.of("player", "drums", "variant", "mallets")))
                .microphone(
                    Map.of(
                        "id",
                        "x",
                        "microphone",
                        "boathouse/sdc-card-1",
                        "pattern",
                        "omni",
                        "position_m",
                        VIOLIN_SPOT,
                        "aim_at",
                        "harp",
                        "wanted",
                        List.of("viola"))),
            List.of(
                "/floor/playing/0/player",
                "/floor/playing/1/variant",
                "/floor/microphones/0/wanted/0",
                "/floor/microphones/0/aim_at",
                "/floor/microphones/0/pattern")),
        Arguments.of(
            "a kit and its snare",
            DEMO.with(
                    "sources",
                    List.of(
                        Map.of(
                            "id", "snare", "source", "core/snare", "position_m", place(3, 5, 1))))
                .pattern("spot", "cardioid", VIOLIN_SPOT, "violin"),
            List.of("/floor/sources/0")),
        Arguments.of(
            "inside a shell",
            HALL.with(
                    "sources",
                    List.of(
                        Map.of(
                            "id",
                            "kick",
                            "source",
                            "core/kick",
                            "placement",
                            "inside",
                            "position_m",
                            place(3, 5, 1))))
                .pattern("spot", "cardioid", VIOLIN_SPOT),
            List.of("/floor/sources/0/placement")));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("impossible")
  void anImpossibleFloorIsRefusedAtItsPlace(
      String what, StandingFloor floor, List<String> pointers) {
    assertThat(Ask.floor("bleed").with("floor", floor.node()).faults(422))
        .as(what)
        .containsExactlyInAnyOrderElementsOf(pointers);
  }

  @ParameterizedTest
  @ValueSource(strings = {"NaN", "Infinity", "1e999", "\"4\"", "-1e308"})
  void aCoordinateThatIsNoPlaceIsAProblem(String x) {
    given()
        .contentType("application/json")
        .body(
            """
            {"floor": {"room": "core/hall",
             "sources": [{"id": "a", "source": "core/violin", "position_m": {"x": 1, "y": 1, "z": 1}}],
             "microphones": [{"id": "m", "pattern": "omni", "position_m": {"x": %s, "y": 1, "z": 1}}]}}
            """
                .formatted(x))
        .post("/v1/floor/bleed")
        .then()
        .statusCode(400)
        .contentType("application/problem+json");
  }

  @ParameterizedTest
  @ValueSource(strings = {"bleed", "alignment", "aim", "exposure", "room"})
  void anEmptyQuestionIsAProblem(String noun) {
    assertThat(Ask.floor(noun).send().statusCode()).isEqualTo(400);
  }

  @Test
  void aSeatInsideASourceIsRefused() {
    assertThat(
            Ask.floor("exposure")
                .with("floor", DEMO.node())
                .with("seats", List.of(Map.of("id", "a", "position_m", place(8.6, 3.9, 1.5))))
                .with("day", List.of(Map.of("title", "all day", "hours", 25)))
                .faults(400))
        .containsExactly("/day/0/hours");
    assertThat(
            Ask.floor("exposure")
                .with("floor", DEMO.node())
                .with("seats", List.of(Map.of("id", "a", "position_m", place(8.6, 3.9, 1.5))))
                .with("day", List.of(Map.of("title", "all day", "hours", 4)))
                .faults(422))
        .containsExactly("/seats/0/position_m");
  }

  @Test
  void anAimOfARoomMicrophoneIsRefused() {
    assertThat(
            Ask.floor("aim")
                .with("floor", DEMO.pattern("room", "omni", place(7, 4, 2)).node())
                .faults(422))
        .containsExactly("/floor/microphones/0/wanted");
  }
}
