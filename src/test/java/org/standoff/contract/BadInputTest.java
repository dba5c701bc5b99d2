package org.standoff.contract;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.fixture.Ask;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Sheets;

/**
 * What is wrong with a question is told with its place, what was found and what may stand there.
 */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class BadInputTest {
  private static final String SETTINGS = "/v1/settings";
  private static final String GOOD =
      "\"source\": \"core/kick\", \"placement\": \"inside\", \"microphone\":"
          + " \"core/ldc-multi-1\", \"preamp\": \"core/preamp-16\"";
  private static final String QUERY =
      "source=core/kick&placement=inside&microphone=core/ldc-multi-1&preamp=core/preamp-16";

  @ParameterizedTest(name = "{0} at {2} is {3}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        // what is put beside a good question | status | pointer | code | suggestion
        "\"distanse_m\": 1 | 400 | /distanse_m | UNKNOWN_NAME | distance_m",
        "\"told_level\": {\"peak_dbspl\": 1} | 400 | /told_level/peak_dbspl | UNKNOWN_NAME |"
            + " peak_db_spl",
        "\"distance_m\": \"0.1\" | 400 | /distance_m | WRONG_TYPE | ",
        "\"distance_m\": true | 400 | /distance_m | WRONG_TYPE | ",
        "\"distance_m\": [1] | 400 | /distance_m | WRONG_TYPE | ",
        "\"distance_m\": {} | 400 | /distance_m | WRONG_TYPE | ",
        "\"distance_m\": 0 | 400 | /distance_m | OUT_OF_RANGE | ",
        "\"distance_m\": 100.01 | 400 | /distance_m | OUT_OF_RANGE | ",
        "\"distance_m\": 1e999 | 400 | /distance_m | OUT_OF_RANGE | ",
        "\"distance_m\": -1e999 | 400 | /distance_m | OUT_OF_RANGE | ",
        "\"angle_deg\": 181 | 400 | /angle_deg | OUT_OF_RANGE | ",
        "\"guarded_percentile\": 100 | 400 | /guarded_percentile | OUT_OF_RANGE | ",
        "\"target_peak_dbfs\": 1 | 400 | /target_peak_dbfs | OUT_OF_RANGE | ",
        "\"limit\": 2.5 | 400 | /limit | WRONG_TYPE | ",
        "\"limit\": 0 | 400 | /limit | OUT_OF_RANGE | ",
        "\"dynamic\": \"lod\" | 400 | /dynamic | UNKNOWN_VALUE | loud",
        "\"dynamic\": 1 | 400 | /dynamic | WRONG_TYPE | ",
        "\"phantom\": \"onn\" | 400 | /phantom | UNKNOWN_VALUE | on",
        "\"room\": \"core/studio-medum\" | 422 | /room | UNKNOWN_ITEM | core/studio-medium",
        "\"room\": 5 | 422 | /room | WRONG_TYPE | ",
        "\"room\": [] | 422 | /room | WRONG_TYPE | ",
        "\"style\": \"core/house-defalt\" | 422 | /style | UNKNOWN_ITEM | core/house-default",
        "\"companions\": [\"outsid\"] | 422 | /companions/0 | UNKNOWN_VALUE | outside",
        "\"companions\": [\"inside\"] | 422 | /companions/0 | UNKNOWN_VALUE | ",
        "\"companions\": \"outside\" | 400 | /companions | WRONG_TYPE | ",
        "\"companions\": [null] | 400 | /companions/0 | MISSING | ",
        "\"doubles\": [{\"source\": \"core/flut\"}] | 422 | /doubles/0/source | UNKNOWN_ITEM |"
            + " core/flute",
        "\"doubles\": [{\"source\": \"core/kick\"}] | 422 | /doubles/0/placement | MISSING | ",
        "\"doubles\": [{}] | 400 | /doubles/0/source | MISSING | ",
        "\"doubles\": [{}, {}, {}, {}, {}] | 400 | /doubles | WRONG_LENGTH | ",
        "\"neighbours\": [{\"source\": \"core/hi-ha\", \"distance_m\": 1, \"angle_deg\": 9}] | 422 |"
            + " /neighbours/0/source | UNKNOWN_ITEM | core/hi-hat",
        "\"neighbours\": [{\"source\": \"core/hi-hat\", \"angle_deg\": 9}] | 400 |"
            + " /neighbours/0/distance_m | MISSING | ",
        "\"in_line_pads_db\": [20, \"x\"] | 400 | /in_line_pads_db/1 | WRONG_TYPE | ",
        "\"in_line_pads_db\": [100] | 400 | /in_line_pads_db/0 | OUT_OF_RANGE | ",
        "\"told_level\": {} | 422 | /told_level | MISSING | ",
        "\"told_level\": {\"peak_db_spl\": 1, \"level_db_spl\": 1} | 422 | /told_level |"
            + " CONTRADICTION | ",
        "\"pack\": \"core\" | 422 | /pack | CONTRADICTION | ",
        "\"stand\": {\"boom_m\": 1} | 400 | /stand/boom_kg | MISSING | ",
        "\"settings\": [{\"pad_db\": 11}] | 422 | /settings/0/pad_db | UNKNOWN_VALUE | ",
        "\"settings\": [{\"pattern\": \"hypercardioid\"}] | 422 | /settings/0/pattern |"
            + " UNKNOWN_VALUE | ",
        "\"settings\": [{\"pattern\": \"hypercardiod\"}] | 400 | /settings/0/pattern |"
            + " UNKNOWN_VALUE | hypercardioid",
        "\"settings\": [{\"high_pass_hz\": 41}] | 422 | /settings/0/high_pass_hz | UNKNOWN_VALUE"
            + " | ",
        "\"settings\": [{\"output\": \"side\"}] | 422 | /settings/0/output | UNKNOWN_VALUE | ",
        "\"settings\": [{\"preamp_pad_db\": 3}] | 422 | /settings/0/preamp_pad_db | UNKNOWN_VALUE"
            + " | ",
      })
  void oneSlipIsToldWithItsPlace(
      String slip, int status, String pointer, String code, String suggestion) {
    Response response = Ask.post(SETTINGS, "{" + GOOD + ", " + slip + "}");
    JsonNode fault = faults(response, status).get(0);
    assertThat(fault.path("pointer").asText()).isEqualTo(pointer);
    assertThat(fault.path("code").asText()).isEqualTo(code);
    assertThat(fault.path("suggestion").textValue()).isEqualTo(suggestion);
    assertThat(fault.path("detail").asText()).isNotEmpty();
    assertThat(response.asString()).doesNotContain("org.standoff", "jackson", "Exception", "[Doub");
  }

  @ParameterizedTest(name = "without {0}")
  @ValueSource(strings = {"source", "preamp"})
  void whatIsNeededIsMissed(String member) {
    ObjectNode body = (ObjectNode) Ask.tree("{" + GOOD + "}");
    body.remove(member);
    assertMissing(Ask.post(SETTINGS, body.toString()), "/" + member);
    body.putNull(member);
    assertMissing(Ask.post(SETTINGS, body.toString()), "/" + member);
  }

  @Test
  void nullIsTheSameAsLeftOut() {
    ObjectNode body = (ObjectNode) Ask.tree("{" + GOOD + "}");
    String answer = Ask.post(SETTINGS, body.toString()).asString();
    for (String member :
        Question.EVERYTHING_ABOUT_SETTINGS.body().properties().stream()
            .map(Map.Entry::getKey)
            .toList()) {
      if (!body.has(member)) {
        body.putNull(member);
      }
    }
    Response withNulls = Ask.post(SETTINGS, body.toString());
    assertThat(withNulls.statusCode()).as(withNulls.asString()).isEqualTo(200);
    assertThat(withNulls.asString()).isEqualTo(answer);
  }

  @Test
  void allSlipsAreToldAtOnce() {
    String body =
        "{\"source\": \"core/kik\", \"placement\": \"inside\", \"preamp\": \"core/preamp-61\","
            + " \"microphones\": [\"core/ldc-multi-1\", \"core/ldc-mlti-1\"],"
            + " \"doubles\": [{\"source\": \"core/flut\"}],"
            + " \"neighbours\": [{\"source\": \"core/hi-ha\", \"distance_m\": 1, \"angle_deg\":"
            + " 0}],"
            + " \"style\": \"core/x\", \"room\": \"core/y\"}";
    assertThat(pointers(faults(Ask.post(SETTINGS, body), 422)))
        .containsExactlyInAnyOrder(
            "/source",
            "/preamp",
            "/microphones/1",
            "/doubles/0/source",
            "/neighbours/0/source",
            "/style",
            "/room");
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        // body | line | column
        "`` | 1 | 1",
        "{ | 1 | ",
        "{\"distance_m\": NaN} | 1 | ",
        "{\"distance_m\": Infinity} | 1 | ",
        "{\"distance_m\": 1, \"distance_m\": 1} | 1 | 31",
        "{\"distance_m\": 01} | 1 | ",
        "{\"so\\ud800urce\": 1} | 1 | ",
        "{} {} | 1 | ",
        "{'source': 1} | 1 | 2",
        "{\"source\": 1, // comment | 1 | ",
      })
  void whatIsNotJsonIsToldWithLineAndColumn(String body, int line, Integer column) {
    Response response = Ask.post(SETTINGS, body);
    JsonNode fault = faults(response, 400).get(0);
    assertThat(fault.path("code").asText()).isEqualTo("MALFORMED");
    assertThat(fault.path("line").asInt()).isEqualTo(line);
    assertThat(fault.path("column").isInt()).isTrue();
    if (column != null) {
      assertThat(fault.path("column").asInt()).isEqualTo(column);
    }
    assertThat(response.asString()).doesNotContain("JsonReadFeature", "Exception", "jackson");
  }

  @ParameterizedTest
  @ValueSource(strings = {"[]", "\"x\"", "5", "null", "true", "[{}]"})
  void whatIsNoObjectIsNoQuestion(String body) {
    assertThat(pointers(faults(Ask.post(SETTINGS, body), 400))).containsExactly("");
  }

  @Test
  void loneSurrogatesComeBackReadable() {
    Response response = Ask.post(SETTINGS, "{\"source\": \"\\ud800\", \"preamp\": \"\\udc00\"}");
    assertThat(pointers(faults(response, 422))).containsExactlyInAnyOrder("/source", "/preamp");
  }

  @Test
  void hugeTextsDeepNestsAndLargeBodiesAreRefused() {
    faults(Ask.post(SETTINGS, "{\"source\": \"" + "x".repeat(1_000_000) + "\"}"), 400);
    faults(Ask.post(SETTINGS, "{\"source\": " + "[".repeat(40) + "]".repeat(40) + "}"), 400);
    faults(Ask.post(SETTINGS, "{\"source\": " + "{\"a\":".repeat(40) + "1" + "}".repeat(41)), 400);
    faults(Ask.post(SETTINGS, "{\"distance_m\": " + "1".repeat(200) + "}"), 400);
    Response large = Ask.post(SETTINGS, "{\"source\": \"" + "x".repeat(1 << 20) + "\"}");
    assertThat(large.statusCode()).isEqualTo(413);
    assertThat(Ask.tree(large.asString()).path("code").asText()).isEqualTo("TOO_LARGE");
  }

  @ParameterizedTest
  @ValueSource(strings = {SETTINGS, "/v1/headroom"})
  void otherMediaTypesAreRefused(String path) {
    assertProblem(given().contentType("text/plain").body("{}").post(path), 415);
    assertProblem(given().contentType("application/xml").body("<a/>").post(path), 415);
    assertProblem(given().delete(path), 405);
  }

  @Test
  void answersInOtherMediaTypesAreRefused() {
    assertProblem(given().accept("image/png").get(SETTINGS + "?" + QUERY), 406);
    assertProblem(
        given()
            .contentType("application/json")
            .accept("image/png")
            .body("{" + GOOD + "}")
            .post(SETTINGS),
        406);
  }

  @ParameterizedTest(name = "{0}: {2} is {3}")
  @CsvSource({
    "distance_m=abc, 400, distance_m, WRONG_TYPE",
    "distance_m=NaN, 400, distance_m, WRONG_TYPE",
    "distance_m=1e999, 400, distance_m, WRONG_TYPE",
    "distance_m=, 400, distance_m, WRONG_TYPE",
    "distance_m=1&distance_m=2, 400, distance_m, WRONG_TYPE",
    "distance_m=1000, 400, distance_m, OUT_OF_RANGE",
    "distanse_m=1, 400, distanse_m, UNKNOWN_NAME",
    "told_level=5, 400, told_level, WRONG_TYPE",
    "told_level.peak_db=5, 400, told_level.peak_db, UNKNOWN_NAME",
    "told_level.at_m=1, 422, told_level, MISSING",
    "dynamic=lod, 400, dynamic, UNKNOWN_VALUE",
    "companions=outsid, 422, companions, UNKNOWN_VALUE",
    "room=core/nowhere, 422, room, UNKNOWN_ITEM",
    "room.title=x, 422, room, WRONG_FORM",
  })
  void slipsOfAQueryNameTheirParameter(String slip, int status, String parameter, String code) {
    Response response = given().urlEncodingEnabled(false).get(SETTINGS + "?" + QUERY + "&" + slip);
    JsonNode fault = faults(response, status).get(0);
    assertThat(fault.path("parameter").asText()).isEqualTo(parameter);
    assertThat(fault.path("code").asText()).isEqualTo(code);
    assertThat(fault.has("pointer")).isFalse();
  }

  @ParameterizedTest(name = "{0} is refused at {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        // what in the sheet | becomes what | pointer within the microphone
        "transducer: condenser | transducer: piezo | /transducer",
        "address: side | address: 5 | /address",
        "need: p48 | need: p12 | /powering/need",
        "source_impedance_ohm: 150 | source_impedance_ohm: -150 | /source_impedance_ohm",
        "level_db_spl: 139 | level_db_spl: '139' | /maximum_spl/level_db_spl",
        "level_db_spl: 139 | level_db_spl: 1390 | /maximum_spl/level_db_spl",
        "pad_db: 10 | pad_db: 0 | /pads/0/pad_db",
        "position: before-electronics | position: before | /pads/0/position",
        "corner_hz: 40 | corner_hz: forty | /high_passes/0/corner_hz",
        "slope_db_per_octave: 12 | slope_db_per_octave: 13 | /high_passes/0/slope_db_per_octave",
        "pattern: omni | pattern: round | /outputs/0/patterns/0/pattern",
        "sensitivity_mv_per_pa: 14 | sensitivity_mv_per_pa: 0 |"
            + " /outputs/0/patterns/0/sensitivity_mv_per_pa",
        "self_noise_dba: 12 | self_noise: 12 | /outputs/0/patterns/0",
        "basis: stated | basis: guessed | /basis",
        "basis: stated | colour: black | ",
        "format: 1 | format: 2 | /format",
        "title: Multi-pattern condenser | title: [] | /title",
      })
  void aBrokenFigureOfAnInlineMicrophoneIsToldWhereItStands(
      String figure, String broken, String pointer) {
    String sheet = Sheets.MULTI_PATTERN.replaceFirst(figure, broken);
    Response response =
        Ask.headroom()
            .with("peak_db_spl", 140)
            .item("microphone", sheet)
            .item("preamp", Sheets.PREAMP)
            .send();
    List<String> pointers = pointers(faults(response, 422));
    assertThat(pointers)
        .anyMatch(told -> told.startsWith("/microphone" + (pointer == null ? "" : pointer)));
  }

  @Test
  void aChainNeedsAPeakOrASourceAndNotBoth() {
    Ask chain = Ask.headroom().item("microphone", Sheets.RIBBON).item("preamp", Sheets.PREAMP);
    assertThat(chain.faults(422)).containsExactly("/peak_db_spl");
    assertThat(chain.with("peak_db_spl", 100).item("source", Sheets.POINT).faults(422))
        .containsExactly("/peak_db_spl");
  }

  private static void assertMissing(Response response, String pointer) {
    JsonNode fault = faults(response, 400).get(0);
    assertThat(fault.path("pointer").asText()).isEqualTo(pointer);
    assertThat(fault.path("code").asText()).isEqualTo("MISSING");
  }

  private static void assertProblem(Response response, int status) {
    assertThat(response.statusCode()).isEqualTo(status);
    assertThat(response.contentType()).isEqualTo("application/problem+json");
  }

  private static JsonNode faults(Response response, int status) {
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(status);
    assertThat(response.contentType()).isEqualTo("application/problem+json");
    JsonNode errors = Ask.tree(response.asString()).path("errors");
    assertThat(errors).as(response.asString()).isNotEmpty();
    return errors;
  }

  private static List<String> pointers(JsonNode faults) {
    List<String> pointers = new ArrayList<>();
    faults.forEach(fault -> pointers.add(fault.path("pointer").asText()));
    return pointers;
  }
}
