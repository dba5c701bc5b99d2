package org.standoff.rest.kit;

import static io.restassured.RestAssured.given;
import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_16;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import io.restassured.config.EncoderConfig;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.fixture.Ask;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Kit;
import org.standoff.fixture.Tokens;

/** A whole kit in one request, units one by one, and what is refused. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class KitOverHttpTest {
  private static final String HEADER =
      "serial,microphone,matched_group,state,day_rate_minor,note\n";

  private final Kit kit = Kit.house();
  private final String house = kit.id();
  private final String units = "/v1/houses/" + house + "/units";

  @Test
  void theReportTellsWhatIsAddedChangedRetiredAndLeftAlone() {
    JsonNode first =
        published(
            sheet(
                "A,core/dyn-card-1,,,400,",
                "B,core/dyn-card-1,,,400,",
                "C,core/dyn-card-1,,,400,"));
    assertReport(first, List.of("A", "B", "C"), List.of(), List.of(), List.of());
    JsonNode second =
        published(
            sheet(
                "A,core/dyn-card-1,,,400,",
                "B,core/dyn-card-1,,in-repair,450,",
                "D,core/dyn-sup-1,,,500,"));
    assertReport(second, List.of("D"), List.of("B"), List.of("C"), List.of("A"));
    assertThat(second.path("revision").asInt()).isEqualTo(first.path("revision").asInt() + 1);
    assertThat(unit("C").jsonPath().getString("state")).isEqualTo("retired");
    assertThat(serials("")).containsExactly("A", "B", "D");
    assertThat(serials("?state=retired")).containsExactly("C");
    assertThat(serials("?microphone=core/dyn-sup-1")).containsExactly("D");
  }

  @Test
  void theSameSheetAgainChangesNothingNotEvenARevision() {
    String sheet = sheet("A,core/dyn-card-1,,,400,x", "B,core/dyn-card-1,,in-repair,0,");
    JsonNode first = published(sheet);
    String unit = unit("A").asString();
    JsonNode again = published(sheet);
    assertReport(again, List.of(), List.of(), List.of(), List.of("A", "B"));
    assertThat(again.path("etag")).isEqualTo(first.path("etag"));
    assertThat(unit("A").asString()).isEqualTo(unit);
  }

  @Test
  void whatComesBackIsTheUnitThatItWas() {
    published(sheet("A,core/dyn-card-1,,,400,"));
    published(sheet("B,core/dyn-card-1,,,400,"));
    JsonNode third = published(sheet("A,core/dyn-card-1,,,400,", "B,core/dyn-card-1,,,400,"));
    assertReport(third, List.of(), List.of("A"), List.of(), List.of("B"));
    assertThat(unit("A").jsonPath().getInt("revision")).isEqualTo(3);
  }

  @Test
  void whatAUnitIsWorthAndHowWellItsGroupMatchesComesBackAsItWasTold() {
    String sheet =
        """
        serial,microphone,matched_group,state,day_rate_minor,note,replacement_minor,match_within_db
        A,core/sdc-card-1,p,available,900,,64000,0.35
        B,core/sdc-card-1,p,available,900,,,
        """
            .replace("\n", "\r\n");
    published(sheet);
    assertThat(unit("A").jsonPath().getLong("replacement_minor")).isEqualTo(64_000);
    assertThat(unit("A").jsonPath().getDouble("match_within_db")).isEqualTo(0.35);
    assertThat(unit("B").jsonPath().getMap("")).doesNotContainKeys("replacement_minor");
    assertThat(given().accept("text/csv").get(units).asString()).isEqualTo(sheet);
    assertReport(published(sheet), List.of(), List.of(), List.of(), List.of("A", "B"));
    JsonNode other = published(sheet.replace("0.35", "0.5").replace(",,,\r", ",,70000,\r"));
    assertReport(other, List.of(), List.of("A", "B"), List.of(), List.of());
    published(sheet.replace("0.35", "0.345"));
    String read = given().accept("text/csv").get(units).asString();
    assertReport(published(read), List.of(), List.of(), List.of(), List.of("A", "B"));
  }

  @Test
  void theUnitsOfAGroupSayTheSameOfHowWellItMatches() {
    String rows = "A,core/dyn-card-1,400,p,0.5\nB,core/dyn-card-1,400,p,3\n";
    assertFault(
        put("serial,microphone,day_rate_minor,matched_group,match_within_db\n" + rows, units),
        3,
        "match_within_db",
        "CONTRADICTION");
  }

  @ParameterizedTest(name = "{0}, {1}: {2} is {3}")
  @CsvSource({
    "-1, , replacement_minor, WRONG_TYPE",
    "12.50, , replacement_minor, WRONG_TYPE",
    "100000000001, , replacement_minor, OUT_OF_RANGE",
    ", -0.5, match_within_db, WRONG_TYPE",
    ", '0,5', match_within_db, WRONG_TYPE",
    ", 6.1, match_within_db, OUT_OF_RANGE",
    ", 0.5, match_within_db, CONTRADICTION",
  })
  void whatIsNoValueAndNoMatchIsToldInItsColumn(
      String replacement, String match, String column, String code) {
    String row =
        "A,core/dyn-card-1,400,\"%s\",\"%s\"\n"
            .formatted(
                Objects.requireNonNullElse(replacement, ""), Objects.requireNonNullElse(match, ""));
    assertFault(
        put("serial,microphone,day_rate_minor,replacement_minor,match_within_db\n" + row, units),
        2,
        column,
        code);
  }

  @Test
  void aDryRunReportsTheSameAndChangesNothing() {
    published(sheet("A,core/dyn-card-1,,,400,"));
    String before = given().get(units).asString();
    JsonNode dry =
        Ask.tree(put(sheet("B,core/dyn-card-1,,,400,"), units + "?dry_run=true").asString());
    assertReport(dry, List.of("B"), List.of(), List.of("A"), List.of());
    assertThat(dry.path("dry_run").asBoolean()).isTrue();
    assertThat(given().get(units).asString()).isEqualTo(before);
    assertThat(put(sheet(), units + "?dry_run=yes").statusCode()).isEqualTo(400);
  }

  @Test
  void aFaultInTheLastRowLeavesEverythingAsItWas() {
    published(sheet("A,core/dyn-card-1,,,400,"));
    String before = given().get(units).asString();
    Response refused =
        put(
            sheet(
                "B,core/dyn-card-1,,,400,", "C,core/dyn-card-1,,,400,", "D,core/dyn-crad-1,,,400,"),
            units);
    assertFault(refused, 4, "microphone", "UNKNOWN_ITEM");
    assertThat(fault(refused).path("suggestion").asText()).isEqualTo("core/dyn-card-1");
    assertThat(given().get(units).asString()).isEqualTo(before);
  }

  @Test
  void aKitAsJsonIsTheKitAsASheet() {
    String json =
        """
        {"units": [
          {"serial": "A", "microphone": "core/sdc-card-1", "matched_group": "p", "day_rate_minor": 900},
          {"serial": "B", "microphone": "core/sdc-card-1", "matched_group": "p", "day_rate_minor": 900,
           "state": "in-repair", "note": "x"}]}
        """;
    Response first = json("*").body(json).put(units);
    assertThat(first.statusCode()).as(first.asString()).isEqualTo(200);
    JsonNode again =
        published(sheet("A,core/sdc-card-1,p,,900,", "B,core/sdc-card-1,p,in-repair,900,x"));
    assertReport(again, List.of(), List.of(), List.of(), List.of("A", "B"));
  }

  @ParameterizedTest(name = "{0} is {2} at {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "{\"units\": [{\"microphone\": \"core/dyn-card-1\", \"day_rate_minor\": 1}]} |"
            + " /units/0/serial | MISSING | 400",
        "{\"units\": [{\"serial\": \"A\", \"microphone\": \"core/dyn-card-1\"}]} |"
            + " /units/0/day_rate_minor | MISSING | 400",
        "{\"units\": [{\"serial\": \"A\", \"microphone\": \"core/dyn-card-1\", \"day_rate_minor\":"
            + " 1, \"state\": \"brokn\"}]} | /units/0/state | UNKNOWN_VALUE | 400",
        "{\"units\": [{\"serial\": \"A\", \"microphone\": \"core/kick\", \"day_rate_minor\": 1}]} |"
            + " /units/0/microphone | UNKNOWN_ITEM | 422",
        "{\"units\": [{\"serial\": \"A\", \"microphone\": \"core/dyn-card-1\", \"day_rate_minor\":"
            + " 1}, {\"serial\": \"A\", \"microphone\": \"core/dyn-card-1\", \"day_rate_minor\":"
            + " 1}]} | /units/1/serial | CONTRADICTION | 422",
        "{\"units\": [{\"serial\": \"A\", \"microphone\": \"core/\\u0000\", \"day_rate_minor\": 1,"
            + " \"state\": \"retired\"}]} | /units/0/microphone | WRONG_FORM | 400",
        "{\"units\": [{\"serial\": \"A\", \"microphone\": \"\", \"day_rate_minor\": 1,"
            + " \"state\": \"retired\"}]} | /units/0/microphone | WRONG_FORM | 400",
        "{\"units\": [{\"serial\": \"A\", \"microphone\": \"core/dyn-card-1\", \"day_rate_minor\":"
            + " 1, \"match_within_db\": 6.5}]} | /units/0/match_within_db | OUT_OF_RANGE | 400",
        "{\"units\": [{\"serial\": \"A\", \"microphone\": \"core/dyn-card-1\", \"day_rate_minor\":"
            + " 1, \"match_within_db\": 1}]} | /units/0/match_within_db | CONTRADICTION | 422",
        "{\"units\": [null]} | /units/0 | MISSING | 400",
        "{} | /units | MISSING | 400",
      })
  void faultsOfAKitAsJsonAreToldWithAPointer(String body, String pointer, String code, int status) {
    Response refused = json("*").body(body).put(units);
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(status);
    assertThat(fault(refused).path("pointer").asText()).isEqualTo(pointer);
    assertThat(fault(refused).path("code").asText()).isEqualTo(code);
  }

  @ParameterizedTest(name = "{0}: row {1}, {2} is {3}")
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        // the rows after the header; ⏎ ends a row | row | column | code
        "A,core/dyn-card-1,,,400 | 2 | | WRONG_LENGTH",
        "A,core/dyn-card-1,,,400,,, | 2 | | WRONG_LENGTH",
        ",core/dyn-card-1,,,400, | 2 | serial | MISSING",
        "A B,core/dyn-card-1,,,400, | 2 | serial | WRONG_FORM",
        "../../etc,core/dyn-card-1,,,400, | 2 | serial | WRONG_FORM",
        "=A1,core/dyn-card-1,,,400, | 2 | serial | WRONG_FORM",
        "A,,,,400, | 2 | microphone | MISSING",
        "A,core/../dyn-card-1,,,400, | 2 | microphone | UNKNOWN_ITEM",
        "A,core/␀,,retired,400, | 2 | microphone | WRONG_FORM",
        "A,core/dyn-card-1,a/b,,400, | 2 | matched_group | WRONG_FORM",
        "A,core/dyn-card-1,p,,400, | 2 | matched_group | CONTRADICTION",
        "A,core/dyn-card-1,p,,400,⏎B,core/dyn-sup-1,p,,400, | 3 | matched_group | CONTRADICTION",
        "A,core/dyn-card-1,,availabel,400, | 2 | state | UNKNOWN_VALUE",
        "A,core/dyn-card-1,,AVAILABLE,400, | 2 | state | UNKNOWN_VALUE",
        "A,core/dyn-card-1,,,, | 2 | day_rate_minor | MISSING",
        "A,core/dyn-card-1,,,4.00, | 2 | day_rate_minor | WRONG_TYPE",
        "A,core/dyn-card-1,,,-400, | 2 | day_rate_minor | WRONG_TYPE",
        "A,core/dyn-card-1,,,1e3, | 2 | day_rate_minor | WRONG_TYPE",
        "A,core/dyn-card-1,,,1000000001, | 2 | day_rate_minor | OUT_OF_RANGE",
        "A,core/dyn-card-1,,,99999999999999999999, | 2 | day_rate_minor | WRONG_TYPE",
        "A,core/dyn-card-1,,,400,␀ | 2 | note | WRONG_FORM",
        "A,core/dyn-card-1,,,400,⏎A,core/dyn-card-1,,,400, | 3 | serial | CONTRADICTION",
        "A,core/dyn-card-1,,,400,⏎⏎⏎B,core/dyn-card-1,,bad,400, | 5 | state | UNKNOWN_VALUE",
        "A,core/dyn-card-1,,,400,\"two⏎lines\"⏎B,core/dyn-card-1,,bad,400, | 3 | state |"
            + " UNKNOWN_VALUE",
        "A,core/dyn-card-1,,,400,\"open | 2 | | MALFORMED",
        "A,core/dyn-card-1,,,400,\"x\"y | 2 | | MALFORMED",
      })
  void aFaultOfASheetIsToldWithRowAndColumn(String rows, int row, String column, String code) {
    Response refused = put(HEADER + rows.replace('⏎', '\n').replace('␀', '\0') + "\n", units);
    assertFault(refused, row, column, code);
    assertThat(serials("")).isEmpty();
  }

  @ParameterizedTest(name = "{0}: {1} is {2}")
  @CsvSource(
      delimiter = '|',
      nullValues = "-",
      value = {
        "serial,microphone,day_rate_minor,colour | colour | UNKNOWN_NAME",
        "serial,microfone,day_rate_minor | microfone | UNKNOWN_NAME",
        "serial,serial,microphone,day_rate_minor | serial | CONTRADICTION",
        "serial,microphone | day_rate_minor | MISSING",
        "serial;microphone;day_rate_minor | serial;microphone;day_rate_minor | UNKNOWN_NAME",
      })
  void aHeaderThatNamesNoColumnsOfOursIsRefused(String header, String column, String code) {
    assertFault(put(header + "\nA,core/dyn-card-1,400\n", units), 1, column, code);
  }

  @Test
  void anEmptySheetIsRefusedAndAHeaderAloneRetiresEverything() {
    assertFault(put("", units), 1, null, "MISSING");
    published(sheet("A,core/dyn-card-1,,,400,"));
    assertReport(published(HEADER), List.of(), List.of(), List.of("A"), List.of());
  }

  @Test
  void allFaultsAreToldAtOnceAndNotMoreThanAHundred() {
    Response both =
        put(
            sheet("A,core/x,,,400,", "B B,core/dyn-card-1,,,400,", "C,core/dyn-card-1,,bad,x,"),
            units);
    assertThat(Ask.tree(both.asString()).path("errors").findValuesAsText("row"))
        .containsExactly("2", "3", "4", "4");
    String many = HEADER + "A,core/dyn-card-1,,bad,400,\n".repeat(5_000);
    Response refused = put(many, units);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(Ask.tree(refused.asString()).path("errors")).hasSize(100);
  }

  @Test
  void columnsStandInAnyOrderAndSomeMayBeMissing() {
    published("day_rate_minor,serial,microphone\r\n400,A,core/dyn-card-1\r\n");
    assertThat(unit("A").jsonPath().getInt("day_rate_minor")).isEqualTo(400);
    assertThat(unit("A").jsonPath().getString("state")).isEqualTo("available");
  }

  @Test
  void bytesThatAreNotUtf8AreToldWithTheirRow() {
    String sheet = sheet("A,core/dyn-card-1,,,400,", "B,core/dyn-card-1,,,400,Gehäuse lose");
    assertFault(put(sheet.getBytes(ISO_8859_1), units), 3, null, "MALFORMED");
    assertFault(put(sheet.getBytes(UTF_16), units), 1, null, "MALFORMED");
    String long1 =
        HEADER
            + String.join(
                "",
                IntStream.range(0, 3_000)
                    .mapToObj(i -> "A" + i + ",core/dyn-card-1,,,400,\n")
                    .toList())
            + "B,core/dyn-card-1,,,400,lose Gehäuse\n";
    assertFault(put(long1.getBytes(ISO_8859_1), units), 3_002, null, "MALFORMED");
    published("\uFEFF" + sheet);
    assertThat(unit("B").jsonPath().getString("note")).isEqualTo("Gehäuse lose");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "=1+1",
        "+1",
        "-1",
        "@x",
        "\t=1",
        "'=1",
        "''=1",
        "'plain",
        "say \"no\"",
        "a,b",
        "two\nlines",
        "Gehäuse \uD83C\uDFA4",
        "=cmd|' /C calc'!A0"
      })
  void aSheetGivenOutIsTheSheetTakenInAndRunsNoFormula(String note) {
    json(null)
        .body(Map.of("microphone", "core/dyn-card-1", "day_rate_minor", 400, "note", note))
        .put(units + "/A")
        .then()
        .statusCode(201);
    String out = given().accept("text/csv").get(units).asString();
    assertThat(out.lines().skip(1).findFirst().orElseThrow().split(",", 6)[5].replace("\"", ""))
        .doesNotMatch("[=+@\\t-].*");
    assertReport(published(out), List.of(), List.of(), List.of(), List.of("A"));
    assertThat(unit("A").jsonPath().getString("note")).isEqualTo(note);
  }

  @Test
  void aMillionRowsAreRefusedWithoutReadingOn() throws Exception {
    byte[] rows = "A,core/dyn-card-1,,,400,\n".repeat(1_000_000).getBytes(UTF_8);
    byte[] header = HEADER.getBytes(UTF_8);
    byte[] all = new byte[header.length + rows.length];
    System.arraycopy(header, 0, all, 0, header.length);
    System.arraycopy(rows, 0, all, header.length, rows.length);
    HttpResponse<String> refused = upload(all);
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(Ask.tree(refused.body()).path("errors").findValuesAsText("code"))
        .contains("CONTRADICTION");
    assertThat(upload(new byte[(32 << 20) + 1]).statusCode()).isEqualTo(413);
  }

  @Test
  void moreThanTwoHundredThousandUnitsAreRefused() {
    StringBuilder sheet = new StringBuilder(HEADER);
    for (int i = 0; i <= 200_000; i++) {
      sheet.append('S').append(i).append(",core/dyn-card-1,,,400,\n");
    }
    assertFault(put(sheet.toString(), units), 200_002, null, "WRONG_LENGTH");
  }

  @Test
  void onlyTheOwnPublisherPublishes() {
    String body = sheet("A,core/dyn-card-1,,,400,");
    assertThat(given().contentType("text/csv").body(body).put(units).statusCode()).isEqualTo(401);
    for (String token : List.of(Tokens.publisher("h-" + UUID.randomUUID()), Tokens.booker("d"))) {
      assertThat(
              given()
                  .auth()
                  .oauth2(token)
                  .contentType("text/csv")
                  .body(body)
                  .put(units)
                  .statusCode())
          .isEqualTo(403);
      assertThat(
              given()
                  .auth()
                  .oauth2(token)
                  .header("If-Match", "*")
                  .delete(units + "/A")
                  .statusCode())
          .isEqualTo(403);
    }
    assertThat(serials("")).isEmpty();
    Response nowhere =
        given()
            .auth()
            .oauth2(Tokens.admin())
            .contentType("text/csv")
            .header("If-Match", "*")
            .body(body)
            .put("/v1/houses/no-such/units");
    assertThat(nowhere.statusCode()).isEqualTo(404);
  }

  @Test
  void aWholeKitNamesTheStateThatItWasMadeFor() {
    Response without =
        given().auth().oauth2(token()).contentType("text/csv").body(HEADER).put(units);
    assertThat(without.statusCode()).isEqualTo(428);
    String tag = given().get(units).jsonPath().getString("kit_etag");
    Response first = sheetOf(tag).body(sheet("A,core/dyn-card-1,,,400,")).put(units);
    assertThat(first.statusCode()).as(first.asString()).isEqualTo(200);
    Response second = sheetOf(tag).body(sheet("B,core/dyn-card-1,,,400,")).put(units);
    assertThat(second.statusCode()).isEqualTo(412);
    assertThat(second.header("ETag")).isEqualTo(first.jsonPath().getString("etag"));
    assertThat(given().get(units).jsonPath().getString("kit_etag"))
        .isEqualTo(first.jsonPath().getString("etag"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"application/json", "text/csv"})
  void aKitThatWasReadIsPublishedOnTheTagOfItsHeaderInWhicheverForm(String form) {
    published(sheet("A,core/dyn-card-1,,,400,", "B,core/dyn-card-1,,,400,"));
    String tag = given().accept(form).get(units).header("ETag");
    given().accept(form).header("If-None-Match", tag).get(units).then().statusCode(304);
    Response first = sheetOf(tag).body(sheet("A,core/dyn-card-1,,,450,")).put(units);
    assertThat(first.statusCode()).as(first.asString()).isEqualTo(200);
    Response second = sheetOf(tag).body(sheet("A,core/dyn-card-1,,,500,")).put(units);
    assertThat(second.statusCode()).isEqualTo(412);
    assertThat(second.header("ETag")).isEqualTo(first.jsonPath().getString("etag"));
    assertThat(given().accept(form).header("If-None-Match", tag).get(units).statusCode())
        .isEqualTo(200);
  }

  @Test
  void everyFormAndPartOfAKitHasATagOfItsOwn() {
    published(sheet("A,core/dyn-card-1,,,400,", "B,core/dyn-sup-1,,,400,"));
    List<Response> forms =
        List.of(
            given().get(units),
            given().accept("text/csv").get(units),
            given().get(units + "?page_size=1"),
            given().get(units + "?microphone=core/dyn-card-1"),
            given().accept("text/csv").get(units + "?microphone=core/dyn-card-1"));
    assertThat(forms).extracting(form -> form.header("ETag")).doesNotHaveDuplicates();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "?page_size=1",
        "?page_size=1&page_token=",
        "?microphone=core/dyn-card-1",
        "?state=available"
      })
  void aPartOfAKitIsNoStateInWhichAllOfItIsPublished(String part) {
    published(sheet("A,core/dyn-card-1,,,400,", "B,core/dyn-card-1,,,400,"));
    String token = given().get(units + "?page_size=1").jsonPath().getString("next_page_token");
    Response read = given().get(units + (part.endsWith("=") ? part + token : part));
    assertThat(read.statusCode()).isEqualTo(200);
    Response refused =
        sheetOf(read.header("ETag")).body(sheet("A,core/dyn-card-1,,,450,")).put(units);
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(412);
    assertThat(refused.header("ETag")).isEqualTo(read.jsonPath().getString("kit_etag"));
    assertThat(serials("")).containsExactly("A", "B");
  }

  @Test
  void aUnitIsTakenBackAsItWasRead() {
    published(sheet("A,core/sdc-card-1,p,in-repair,400,x", "B,core/sdc-card-1,p,,400,"));
    Response read = unit("A");
    Response same = json(read.header("ETag")).body(read.asString()).put(units + "/A");
    assertThat(same.statusCode()).as(same.asString()).isEqualTo(200);
    assertThat(same.asString()).isEqualTo(read.asString());
    String edited = read.asString().replace("\"note\":\"x\"", "\"note\":\"y\"");
    Response changed = json(read.header("ETag")).body(edited).put(units + "/A");
    assertThat(changed.statusCode()).as(changed.asString()).isEqualTo(200);
    assertThat(changed.jsonPath().getString("note")).isEqualTo("y");
    assertThat(changed.jsonPath().getInt("revision"))
        .as("counted by the service, whatever the body says")
        .isEqualTo(read.jsonPath().getInt("revision") + 1);
  }

  @ParameterizedTest(name = "{0} is {2} at {1}")
  @CsvSource(
      delimiter = '|',
      value = {
        "\"house\": \"another\" | /house | CONTRADICTION",
        "\"house\": 1 | /house | CONTRADICTION",
        "\"id\": \"x\" | /id | UNKNOWN_NAME",
        "\"etags\": \"x\" | /etags | UNKNOWN_NAME",
      })
  void whatAUnitIsNotIsRefusedWhereItSaysSo(String member, String pointer, String code) {
    Response refused =
        json(null)
            .body("{\"microphone\": \"core/dyn-card-1\", \"day_rate_minor\": 400, " + member + "}")
            .put(units + "/A");
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(400);
    assertThat(fault(refused).path("pointer").asText()).isEqualTo(pointer);
    assertThat(fault(refused).path("code").asText()).isEqualTo(code);
    assertThat(unit("A").statusCode()).isEqualTo(404);
  }

  @Test
  void unitsOfAListAreTakenBackInAWholeKit() {
    published(sheet("A,core/dyn-card-1,,,400,x", "B,core/dyn-card-1,,in-repair,400,"));
    Response read = given().get(units);
    String told = "{\"units\": " + Ask.tree(read.asString()).path("items") + "}";
    Response same = json(read.header("ETag")).body(told).put(units);
    assertThat(same.statusCode()).as(same.asString()).isEqualTo(200);
    assertReport(Ask.tree(same.asString()), List.of(), List.of(), List.of(), List.of("A", "B"));
    JsonNode foreign = Ask.tree(told);
    ((ObjectNode) foreign.at("/units/1")).put("house", "another");
    Response refused = json(read.header("ETag")).body(foreign.toString()).put(units);
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(400);
    assertThat(fault(refused).path("pointer").asText()).isEqualTo("/units/1/house");
    assertThat(fault(refused).path("code").asText()).isEqualTo("CONTRADICTION");
  }

  @Test
  void aUnitIsAddedToldAnewAndRetired() {
    String body = "{\"microphone\": \"core/dyn-card-1\", \"day_rate_minor\": 400}";
    Response made = json(null).body(body).put(units + "/A");
    assertThat(made.statusCode()).as(made.asString()).isEqualTo(201);
    assertThat(made.header("Cache-Control")).isEqualTo("no-store");
    assertThat(json(null).body(body).put(units + "/A").statusCode()).isEqualTo(428);
    Response same = json(made.header("ETag")).body(body).put(units + "/A");
    assertThat(same.statusCode()).isEqualTo(200);
    assertThat(same.header("ETag")).isEqualTo(made.header("ETag"));
    Response changed = json(made.header("ETag")).body(body.replace("400", "500")).put(units + "/A");
    assertThat(changed.jsonPath().getInt("day_rate_minor")).isEqualTo(500);
    assertThat(json(made.header("ETag")).body(body).put(units + "/A").statusCode()).isEqualTo(412);
    Response unconditional = given().auth().oauth2(token()).delete(units + "/A");
    assertThat(unconditional.statusCode()).isEqualTo(428);
    Response retired = json(changed.header("ETag")).delete(units + "/A");
    assertThat(retired.jsonPath().getString("state")).isEqualTo("retired");
    assertThat(unit("A").jsonPath().getString("state")).isEqualTo("retired");
    // it stays on record, and so is not made again
    assertThat(json("*").body(body).put(units + "/A").statusCode()).isEqualTo(200);
    assertThat(json("*").delete(units + "/B").statusCode()).isEqualTo(404);
    assertThat(given().get(units + "/B").statusCode()).isEqualTo(404);
  }

  @Test
  void aUnitUnderAHoldIsNeitherRetiredNorTurnedIntoAnother() {
    published(sheet("A,core/dyn-card-1,,,400,", "B,core/dyn-card-1,,,400,"));
    UUID hold = kit.hold("A");
    List<Response> refused =
        List.of(
            json("*").delete(units + "/A"),
            json("*")
                .body("{\"microphone\":\"core/dyn-sup-1\",\"day_rate_minor\":1}")
                .put(units + "/A"),
            json("*")
                .body(
                    "{\"microphone\":\"core/dyn-card-1\",\"day_rate_minor\":1,\"state\":\"retired\"}")
                .put(units + "/A"),
            put(sheet("B,core/dyn-card-1,,,400,"), units),
            put(sheet("B,core/dyn-card-1,,,400,"), units + "?dry_run=true"),
            put(sheet("A,core/dyn-sup-1,,,400,", "B,core/dyn-card-1,,,400,"), units));
    for (Response response : refused) {
      assertThat(response.statusCode()).as(response.asString()).isEqualTo(409);
      assertThat(fault(response).path("detail").asText()).contains("A", hold.toString());
    }
    assertThat(serials("")).containsExactly("A", "B");
    // told to be in repair, or at another price, it still is what was promised
    published(sheet("A,core/dyn-card-1,,in-repair,500,", "B,core/dyn-card-1,,,400,"));
    Kit.sql("update hold_unit set occupies = false where hold = ?", hold);
    published(sheet("B,core/dyn-card-1,,,400,"));
    assertThat(serials("")).containsExactly("B");
  }

  @Test
  void pagesHoldEveryUnitOnce() {
    StringBuilder sheet = new StringBuilder(HEADER);
    List<String> all = new ArrayList<>();
    for (int i = 100; i < 225; i++) {
      all.add("S" + i);
      sheet.append('S').append(i).append(",core/dyn-card-1,,,400,\n");
    }
    published(sheet.toString());
    List<String> read = new ArrayList<>();
    String next = units + "?page_size=40";
    while (next != null) {
      Response page = given().urlEncodingEnabled(false).get(next);
      read.addAll(page.jsonPath().getList("items.serial"));
      String token = page.jsonPath().getString("next_page_token");
      next = token == null ? null : units + "?page_size=40&page_token=" + token;
      if (next != null) {
        assertThat(page.headers().getValues("Link")).anyMatch(link -> link.contains("next"));
      }
    }
    assertThat(read).isEqualTo(all);
  }

  @Test
  void aTokenOfSomebodysOwnMakingIsRefused() {
    String forged = Base64.getUrlEncoder().encodeToString("0 A\0B".getBytes(UTF_8));
    Response refused = given().get(units + "?page_token=" + forged);
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(400);
    assertThat(fault(refused).path("parameter").asText()).isEqualTo("page_token");
  }

  private String token() {
    return Tokens.publisher(house);
  }

  private static String sheet(String... rows) {
    return HEADER + String.join("\n", rows) + "\n";
  }

  private JsonNode published(String sheet) {
    Response response = put(sheet, units);
    assertThat(response.statusCode()).as(response.asString()).isEqualTo(200);
    return Ask.tree(response.asString());
  }

  private Response put(String sheet, String path) {
    return put(sheet.getBytes(UTF_8), path);
  }

  private Response put(byte[] sheet, String path) {
    return sheetOf("*").body(sheet).put(path);
  }

  /** By the client of the JDK: REST-assured takes half a minute over so much. */
  private HttpResponse<String> upload(byte[] sheet) throws IOException, InterruptedException {
    return HttpClient.newHttpClient()
        .send(
            HttpRequest.newBuilder(URI.create(RestAssured.baseURI + ":" + RestAssured.port + units))
                .header("Authorization", "Bearer " + token())
                .header("Content-Type", "text/csv")
                .header("If-Match", "*")
                .PUT(HttpRequest.BodyPublishers.ofByteArray(sheet))
                .build(),
            HttpResponse.BodyHandlers.ofString());
  }

  private RequestSpecification sheetOf(String tag) {
    return given()
        .auth()
        .oauth2(token())
        .config(
            RestAssured.config()
                .encoderConfig(
                    EncoderConfig.encoderConfig()
                        .appendDefaultContentCharsetToContentTypeIfUndefined(false)))
        .header("Content-Type", "text/csv")
        .header("If-Match", tag);
  }

  private RequestSpecification json(String tag) {
    RequestSpecification request = given().auth().oauth2(token()).contentType("application/json");
    return tag == null ? request : request.header("If-Match", tag);
  }

  private Response unit(String serial) {
    return given().get(units + "/" + serial);
  }

  private List<String> serials(String query) {
    return given().urlEncodingEnabled(false).get(units + query).jsonPath().getList("items.serial");
  }

  private static JsonNode fault(Response response) {
    return Ask.tree(response.asString()).path("errors").path(0);
  }

  private static void assertFault(Response refused, int row, String column, String code) {
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(422);
    JsonNode fault = fault(refused);
    assertThat(fault.path("row").asInt()).as(refused.asString()).isEqualTo(row);
    assertThat(fault.path("field").textValue()).as(refused.asString()).isEqualTo(column);
    assertThat(fault.path("code").asText()).as(refused.asString()).isEqualTo(code);
    assertThat(refused.asString()).doesNotContain("Exception", "jackson", "org.standoff");
  }

  private static void assertReport(
      JsonNode report,
      List<String> added,
      List<String> changed,
      List<String> retired,
      List<String> unchanged) {
    assertThat(serials(report, "added")).isEqualTo(added);
    assertThat(serials(report, "changed")).isEqualTo(changed);
    assertThat(serials(report, "retired")).isEqualTo(retired);
    assertThat(serials(report, "unchanged")).isEqualTo(unchanged);
  }

  private static List<String> serials(JsonNode report, String way) {
    List<String> serials = new ArrayList<>();
    report.path(way).path("serials").forEach(serial -> serials.add(serial.asText()));
    assertThat(report.path(way).path("count").asInt()).isEqualTo(serials.size());
    return serials;
  }
}
