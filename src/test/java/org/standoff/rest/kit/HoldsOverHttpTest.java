package org.standoff.rest.kit;

import static io.restassured.RestAssured.given;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.hamcrest.Matchers.containsString;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.fixture.Ask;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Kit;
import org.standoff.fixture.Tokens;
import org.standoff.kit.Sql;

@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class HoldsOverHttpTest {

  private static final String PAIR = "boathouse/sdc-omni-1";
  private static final String SINGLE = "boathouse/ldc-multi-1";
  private static final String FROM = "2027-06-11T10:00:00+02:00";
  private static final String TO = "2027-06-14T11:00:00+02:00";

  @Inject DataSource dataSource;

  private final String desk = "desk-" + UUID.randomUUID();
  private final String other = "desk-" + UUID.randomUUID();
  private String house;
  private String second;
  private List<String> pair;

  @BeforeEach
  void theHousesStand() {
    Kit kit = Kit.house().turnRoundMin(240);
    house = kit.id();
    pair = kit.matchedPair(PAIR);
    kit.units(SINGLE, 2);
    kit.units("boathouse/ldc-card-1", 4);
    Kit elsewhere = Kit.house();
    second = elsewhere.id();
    elsewhere.units(SINGLE, 1);
  }

  private static RequestSpecification by(String subject) {
    return given().auth().oauth2(Tokens.booker(subject)).contentType("application/json");
  }

  private static RequestSpecification publisher(String ofHouse) {
    return given().auth().oauth2(Tokens.publisher(ofHouse)).contentType("application/json");
  }

  private static ObjectNode line(String ofHouse, String microphone, int quantity) {
    return new ObjectMapper()
        .createObjectNode()
        .put("house", ofHouse)
        .put("microphone", microphone)
        .put("quantity", quantity);
  }

  private static ObjectNode wish(String reference, ObjectNode... lines) {
    ObjectNode wish = new ObjectMapper().createObjectNode();
    wish.put("reference", reference).put("from", FROM).put("to", TO);
    wish.putArray("lines").addAll(List.of(lines));
    return wish;
  }

  private static Response hold(String subject, String key, ObjectNode wish) {
    return by(subject).header("Idempotency-Key", key).body(wish.toString()).post("/v1/holds");
  }

  /** A tentative hold of the pair. */
  private Response held(String reference) {
    Response made =
        hold(
            desk,
            UUID.randomUUID().toString(),
            wish(reference, line(house, PAIR, 2).put("matched", true)));
    assertThat(made.statusCode()).as(made.asString()).isEqualTo(201);
    return made;
  }

  private static String address(Response made) {
    return made.header("Location").replaceFirst("^https?://[^/]+", "");
  }

  private static Response step(RequestSpecification as, Response of, String step) {
    return as.header("If-Match", of.jsonPath().getString("etag"))
        .post("/v1/holds/" + of.jsonPath().getString("id") + "/" + step);
  }

  @Test
  void aHoldIsMadeAndStandsAtItsAddress() {
    Response made = held("r-1");
    assertThat(made.jsonPath().getString("state")).isEqualTo("tentative");
    assertThat(made.jsonPath().getString("desk")).isEqualTo(desk);
    assertThat(made.jsonPath().getString("from")).isEqualTo("2027-06-11T08:00:00Z");
    assertThat(made.jsonPath().getList("lines[0].units.serial", String.class)).isEqualTo(pair);
    assertThat(made.jsonPath().getString("lines[0].units[0].busy_to"))
        .as("four hours of turn-round after the return at 9:00 UTC")
        .isEqualTo("2027-06-14T13:00:00Z");
    assertThat(made.jsonPath().getList("steps.step", String.class))
        .containsExactly("confirm", "release", "extend");
    Response read = by(desk).get(address(made));
    assertThat(read.statusCode()).isEqualTo(200);
    assertThat(Ask.tree(read.asString())).isEqualTo(Ask.tree(made.asString()));
    assertThat(read.header("ETag")).isEqualTo(made.header("ETag"));
    assertThat(
            by(desk).header("If-None-Match", read.header("ETag")).get(address(made)).statusCode())
        .isEqualTo(304);
  }

  @Test
  void aHoldIsAnEventForADiary() {
    Response made = held("r; one");
    by(desk)
        .accept("text/calendar")
        .get(address(made))
        .then()
        .statusCode(200)
        .contentType(containsString("text/calendar"))
        .body(containsString("UID:" + made.jsonPath().getString("id") + "\r\n"))
        .body(containsString("SUMMARY:r\\; one (tentative)\r\n"))
        .body(containsString("DTEND:20270614T090000Z\r\n"));
  }

  @Test
  void aKeyIsWantedAndMakesARetrySafe() {
    ObjectNode wish = wish("r-2", line(house, SINGLE, 1));
    Response without = by(desk).body(wish.toString()).post("/v1/holds");
    assertThat(without.statusCode()).isEqualTo(400);
    assertThat(without.jsonPath().getString("errors[0].parameter")).isEqualTo("Idempotency-Key");
    assertThat(without.jsonPath().getString("errors[0].code")).isEqualTo("MISSING");
    Response first = hold(desk, "k-1", wish);
    Response again = hold(desk, "\"k-1\"", wish);
    assertThat(again.statusCode()).isEqualTo(201);
    assertThat(again.asString()).isEqualTo(first.asString());
    assertThat(again.header("Location")).isEqualTo(first.header("Location"));
    assertThat(again.header("ETag")).isEqualTo(first.header("ETag"));
    Response otherBody = hold(desk, "k-1", wish("r-3", line(house, SINGLE, 1)));
    assertThat(otherBody.statusCode()).isEqualTo(422);
    assertThat(otherBody.jsonPath().getString("errors[0].parameter")).isEqualTo("Idempotency-Key");
    assertThat(hold(desk, "é", wish).statusCode()).isEqualTo(400);
  }

  @Test
  void aReferenceIsTakenOnce() {
    Response first = held("r-4");
    Response again = hold(desk, "k-2", wish("r-4", line(house, SINGLE, 1)));
    assertThat(again.statusCode()).isEqualTo(409);
    assertThat(again.jsonPath().getString("code")).isEqualTo("CLASH");
    assertThat(again.jsonPath().getString("reference")).isEqualTo("r-4");
    assertThat(again.jsonPath().getString("hold")).isEqualTo(address(first));
  }

  @Test
  void aShortageSaysLineByLineWhatElseCouldBeDone() {
    assertThat(hold(other, "k-3", wish("theirs", line(house, SINGLE, 1))).statusCode())
        .isEqualTo(201);
    Response refused =
        hold(
            desk,
            "k-4",
            wish("r-5", line(house, PAIR, 2), line(house, SINGLE, 2), line(second, SINGLE, 1)));
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(409);
    assertThat(refused.contentType()).startsWith("application/problem+json");
    JsonNode shortfall = Ask.tree(refused.asString()).path("shortfalls").path(0);
    assertThat(Ask.tree(refused.asString()).path("shortfalls")).hasSize(1);
    assertThat(shortfall.path("pointer").asText()).isEqualTo("/lines/1");
    assertThat(shortfall.path("quantity").asInt()).isEqualTo(2);
    assertThat(shortfall.path("free_count").asInt()).isEqualTo(1);
    assertThat(shortfall.path("free_from").asText())
        .as("when the other hold is back and turned round")
        .startsWith("2027-06-14T15:00");
    assertThat(shortfall.path("elsewhere").findValuesAsText("house")).contains(second);
    assertThat(shortfall.path("substitutes"))
        .as("the wanted one can be switched to omni and figure of eight")
        .anySatisfy(
            substitute -> {
              assertThat(substitute.path("microphone").asText()).isEqualTo("boathouse/ldc-card-1");
              assertThat(substitute.path("loses").toString()).contains("omni");
            });
    assertThat(hold(desk, "k-4", wish("r-5", line(house, PAIR, 2))).statusCode())
        .as("a key whose request failed is still good for another body")
        .isEqualTo(201);
  }

  @Test
  void elsewhereThereIsEnoughOnlyWhereTheDoorLetsItThrough() {
    // a model of this test's own at houses that are asked first: the period is Friday to Monday
    String model = "gone/" + UUID.randomUUID();
    String byDropBox = houseAskedFirst(model, "fri 08:00-18:00", true);
    String closedAtTheEnd = houseAskedFirst(model, "fri 08:00-18:00", false);
    String closedAtTheBeginning = houseAskedFirst(model, "mon 08:00-18:00", true);
    Response refused = hold(desk, "k-12", wish("r-21", line(house, model, 3)));
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(409);
    Map<String, Boolean> enough = new HashMap<>();
    Ask.tree(refused.asString())
        .at("/shortfalls/0/elsewhere")
        .forEach(one -> enough.put(one.path("house").asText(), one.path("enough").asBoolean()));
    assertThat(enough)
        .isEqualTo(Map.of(byDropBox, true, closedAtTheEnd, false, closedAtTheBeginning, false));
  }

  private static String houseAskedFirst(String model, String hours, boolean dropBox) {
    String id = "0-" + UUID.randomUUID();
    Kit.sql(
        "insert into house (id, title, zone, hours, drop_box)"
            + " values (?, 'First', 'Europe/Vienna', ?, ?)",
        id,
        hours,
        dropBox);
    Kit.sql(
        "insert into unit (house, serial, microphone, state, day_rate_minor)"
            + " select ?, 'S' || i, ?, 'available', 100 from generate_series(1, 3) as i",
        id,
        model);
    return id;
  }

  @Test
  void howManyUnitsOfAModelAWishMayWantIsNoOtherWhereTheyAreShort() {
    ObjectNode wish =
        wish(
            "r-20",
            line(house, SINGLE, 50),
            line(house, SINGLE, 50),
            line(house, SINGLE, 50),
            line(house, SINGLE, 50),
            line(second, SINGLE, 50));
    Response refused = hold(desk, "k-11", wish);
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(409);
    assertThat(refused.jsonPath().getList("shortfalls.pointer"))
        .containsExactly("/lines/0", "/lines/1", "/lines/2", "/lines/3", "/lines/4");
  }

  @Test
  void whereUnitsAreShortAWishMayWait() {
    Response first = held("r-6");
    ObjectNode same = wish("r-7", line(house, PAIR, 2).put("matched", true));
    Response waiting = hold(other, "k-5", same.put("second", true));
    assertThat(waiting.statusCode()).isEqualTo(201);
    assertThat(waiting.jsonPath().getString("state")).isEqualTo("waiting");
    assertThat(step(by(desk), first, "release").statusCode()).isEqualTo(200);
    assertThat(by(other).get(address(waiting)).jsonPath().getString("state"))
        .isEqualTo("tentative");
  }

  @Test
  void whoWaitsMovesUpWhereTheHouseNeedsLessTurnRound() {
    held("r-22");
    ObjectNode before = wish("r-23", line(house, PAIR, 2).put("matched", true));
    before.put("from", "2027-06-10T10:00:00+02:00").put("to", "2027-06-11T08:00:00+02:00");
    Response waiting = hold(other, "k-13", before.put("second", true));
    assertThat(waiting.jsonPath().getString("state"))
        .as("four hours of turn-round reach into the next hire, which begins after two")
        .isEqualTo("waiting");
    Response changed =
        publisher(house)
            .header("If-Match", "*")
            .body(
                "{\"title\": \"Test house\", \"zone\": \"Europe/Vienna\","
                    + " \"currency\": \"EUR\", \"turn_round_min\": 120}")
            .put("/v1/houses/" + house);
    assertThat(changed.statusCode()).as(changed.asString()).isEqualTo(200);
    assertThat(by(other).get(address(waiting)).jsonPath().getString("state"))
        .isEqualTo("tentative");
  }

  @Test
  void whatWillGoToThoseWhoWaitIsNotFree() {
    Response first = held("r-24");
    ObjectNode same = wish("r-25", line(house, PAIR, 2).put("matched", true));
    assertThat(hold(other, "k-14", same.put("second", true)).statusCode()).isEqualTo(201);
    makeDue(first);
    Response availability =
        given()
            .queryParam("microphone", PAIR)
            .queryParam("houses", house)
            .queryParam("from", FROM)
            .queryParam("to", TO)
            .get("/v1/availability");
    assertThat(availability.jsonPath().getInt("lines[0].houses[0].free_count")).isZero();
  }

  @Test
  void whoWaitsMovesUpAlthoughNobodyAsks() {
    Response first = held("r-26");
    ObjectNode same = wish("r-27", line(house, PAIR, 2).put("matched", true));
    Response waiting = hold(other, "k-15", same.put("second", true));
    makeDue(first);
    // not over HTTP: whoever reads holds lets fall what is due
    await().atMost(Duration.ofMinutes(1)).until(() -> state(waiting), "tentative"::equals);
  }

  private String state(Response made) throws SQLException {
    try (Connection connection = dataSource.getConnection()) {
      return Sql.first(
              connection,
              "select state from hold where id = ?::uuid",
              row -> row.getString("state"),
              made.jsonPath().getString("id"))
          .orElseThrow();
    }
  }

  private static void makeDue(Response made) {
    Kit.sql(
        "update hold set expires_at = now() where id = ?::uuid", made.jsonPath().getString("id"));
  }

  @Test
  void aDryRunAnswersAndHoldsNothing() {
    ObjectNode wish = wish("r-8", line(house, PAIR, 2));
    Response dry = by(desk).body(wish.toString()).post("/v1/holds?dry_run=true");
    assertThat(dry.statusCode()).as(dry.asString()).isEqualTo(200);
    assertThat(dry.jsonPath().getList("lines[0].units")).hasSize(2);
    assertThat(by(desk).get("/v1/holds").jsonPath().getList("items")).isEmpty();
    assertThat(by(desk).body(wish.toString()).post("/v1/holds?dry_run=yes").statusCode())
        .isEqualTo(400);
  }

  @Test
  void theStepsLeadFromTheDeskToTheHouseAndBack() {
    Response made = held("r-9");
    assertThat(by(desk).post(address(made) + "/confirm").statusCode()).isEqualTo(428);
    Response confirmed = step(by(desk), made, "confirm");
    assertThat(confirmed.jsonPath().getString("state")).isEqualTo("confirmed");
    assertThat(confirmed.jsonPath().getString("expires_at")).isNull();
    Response stale = step(by(desk), made, "release");
    assertThat(stale.statusCode()).isEqualTo(412);
    assertThat(stale.header("ETag")).isEqualTo(confirmed.jsonPath().getString("etag"));
    Response longer =
        step(by(desk).body("{\"to\": \"2027-06-15T09:00:00+02:00\"}"), confirmed, "extend");
    assertThat(longer.jsonPath().getString("to")).isEqualTo("2027-06-15T07:00:00Z");
    assertThat(step(by(desk), longer, "check-out").statusCode())
        .as("the desk does not hand over")
        .isEqualTo(403);
    Response out = step(publisher(house), longer, "check-out");
    assertThat(out.jsonPath().getString("state")).isEqualTo("out");
    Response part =
        step(publisher(house).body("{\"units\": [\"" + pair.get(0) + "\"]}"), out, "check-in");
    assertThat(part.jsonPath().getString("hold.state")).isEqualTo("out");
    Response back =
        publisher(house)
            .header("If-Match", part.jsonPath().getString("hold.etag"))
            .post(address(made) + "/check-in");
    assertThat(back.jsonPath().getString("hold.state")).isEqualTo("returned");
    assertThat(back.jsonPath().getList("hits")).isEmpty();
    Response over = by(desk).header("If-Match", "*").post(address(made) + "/release");
    assertThat(over.statusCode()).isEqualTo(409);
    assertThat(over.jsonPath().getString("state")).isEqualTo("returned");
  }

  @Test
  void aHoldCostsWhatItsUnitsCostWhenTheyWerePromised() {
    Response made = held("r-30");
    Response dearer =
        publisher(house)
            .header("If-Match", "*")
            .body(
                "{\"microphone\": \"%s\", \"matched_group\": \"%s\", \"day_rate_minor\": 9000}"
                    .formatted(PAIR, made.jsonPath().getString("lines[0].units[0].matched_group")))
            .put("/v1/houses/" + house + "/units/" + pair.get(0));
    assertThat(dearer.statusCode()).as(dearer.asString()).isEqualTo(200);
    Response charge = by(desk).get(address(made) + "/charge");
    assertThat(charge.jsonPath().getList("houses.house")).containsExactly(house);
    assertThat(charge.jsonPath().getList("houses[0].units.serial")).isEqualTo(pair);
    // 2 x 10.00 x 4: Friday to Monday, for the house counts a weekend as two days
    assertThat(charge.jsonPath().getDouble("houses[0].units[0].charged_days")).isEqualTo(4);
    assertThat(charge.jsonPath().getLong("houses[0].owed_minor")).isEqualTo(8_000);
    assertThat(charge.jsonPath().getList("totals.owed_minor")).containsExactly(8_000);
    assertThat(charge.jsonPath().getInt("houses[0].missing_count")).isZero();
    step(by(desk), made, "release");
    Response released = by(desk).get(address(made) + "/charge");
    assertThat(released.jsonPath().getList("houses")).isEmpty();
    assertThat(released.jsonPath().getList("totals")).isEmpty();
  }

  @Test
  void whatIsNotBackIsToldWithWhatItsHouseAsksForIt() {
    Kit.sql("update unit set replacement_minor = 64000 where house = ?", house);
    ObjectNode wish =
        wish("r-32", line(house, PAIR, 2).put("matched", true), line(second, SINGLE, 1));
    Response made = hold(desk, "k-32", wish);
    Response out = step(publisher(house), step(by(desk), made, "confirm"), "check-out");
    // as if it had been due on 1 June 2026, a Monday; a weekend is two days here, so each day is
    // one
    Kit.sql(
        "update hold set held_from = '2026-05-29T08:00:00Z', held_to = '2026-06-01T09:00:00Z'"
            + " where id = ?::uuid",
        out.jsonPath().getString("id"));
    Kit.sql(
        "update hold_unit set lent_to = '2026-06-01T09:00:00Z' where hold = ?::uuid",
        out.jsonPath().getString("id"));
    Response charge = publisher(house).get(address(made) + "/charge");
    LocalDate asOf =
        Instant.parse(charge.jsonPath().getString("as_of"))
            .atZone(ZoneId.of("Europe/Vienna"))
            .toLocalDate();
    long late = ChronoUnit.DAYS.between(LocalDate.of(2026, 6, 1), asOf);
    assertThat(charge.jsonPath().getList("houses.house"))
        .as("a house sees its own part")
        .containsExactly(house);
    assertThat(charge.jsonPath().getInt("houses[0].missing_count")).isEqualTo(2);
    assertThat(charge.jsonPath().getLong("houses[0].missing_replacement_minor")).isEqualTo(128_000);
    assertThat(charge.jsonPath().getLong("houses[0].charge_minor")).isEqualTo(2 * 4 * 1_000);
    assertThat(charge.jsonPath().getLong("houses[0].late_minor")).isEqualTo(2 * late * 1_000);
    assertThat(by(desk).get(address(made) + "/charge").jsonPath().getList("houses.house"))
        .containsExactly(house, second);
  }

  @Test
  void anExtensionIntoAnothersTimeNamesTheUnits() {
    Response made = held("r-10");
    ObjectNode later = wish("r-11", line(house, PAIR, 2));
    later.put("from", "2027-06-15T10:00:00+02:00").put("to", "2027-06-16T10:00:00+02:00");
    assertThat(hold(other, "k-6", later).statusCode()).isEqualTo(201);
    Response refused =
        step(by(desk).body("{\"to\": \"2027-06-15T09:00:00+02:00\"}"), made, "extend");
    assertThat(refused.statusCode()).isEqualTo(409);
    assertThat(refused.jsonPath().getList("conflicts.serial", String.class)).isEqualTo(pair);
    assertThat(refused.jsonPath().getString("conflicts[0].busy_from"))
        .isEqualTo("2027-06-15T08:00:00Z");
  }

  @Test
  void aHoldIsNobodyElsesBusiness() {
    Response made = held("r-12");
    String address = address(made);
    assertThat(given().get(address).statusCode()).isEqualTo(401);
    assertThat(by(other).get(address).statusCode()).isEqualTo(404);
    assertThat(publisher(second).get(address).statusCode()).isEqualTo(404);
    for (String step : List.of("confirm", "release", "check-out", "check-in")) {
      assertThat(by(other).header("If-Match", "*").post(address + "/" + step).statusCode())
          .as(step)
          .isEqualTo(404);
    }
    assertThat(publisher(house).get(address).statusCode()).isEqualTo(200);
    assertThat(publisher(house).header("If-Match", "*").post(address + "/confirm").statusCode())
        .isEqualTo(403);
    assertThat(given().auth().oauth2(Tokens.admin()).get(address).jsonPath().getString("reference"))
        .isEqualTo("r-12");
    assertThat(by(desk).get("/v1/holds/" + UUID.randomUUID()).statusCode()).isEqualTo(404);
  }

  @Test
  void aHouseSeesOnlyItsLines() {
    Response made =
        hold(desk, "k-7", wish("r-13", line(house, SINGLE, 1), line(second, SINGLE, 1)));
    assertThat(made.jsonPath().getList("lines")).hasSize(2);
    assertThat(publisher(second).get(address(made)).jsonPath().getList("lines.house", String.class))
        .containsExactly(second);
  }

  @Test
  void eachViewOfAHoldHasATagOfItsOwnAndAnyOfThemNamesItsStateForAStep() {
    Response made =
        hold(desk, "k-8", wish("r-14", line(house, SINGLE, 1), line(second, SINGLE, 1)));
    String address = address(made);
    String ofDesk = by(desk).get(address).header("ETag");
    String ofHouse = publisher(house).get(address).header("ETag");
    String ofSecond = publisher(second).get(address).header("ETag");
    String ofDiary = by(desk).accept("text/calendar").get(address).header("ETag");
    assertThat(List.of(ofDesk, ofHouse, ofSecond, ofDiary)).doesNotHaveDuplicates();
    assertThat(known(publisher(second), ofHouse, address)).isEqualTo(200);
    assertThat(known(publisher(second), ofDesk, address)).isEqualTo(200);
    assertThat(known(publisher(second), made.jsonPath().getString("etag"), address)).isEqualTo(200);
    assertThat(known(publisher(second), ofSecond, address)).isEqualTo(304);
    Response confirmed = by(desk).header("If-Match", ofSecond).post(address + "/confirm");
    assertThat(confirmed.statusCode()).as(confirmed.asString()).isEqualTo(200);
    assertThat(by(desk).header("If-Match", ofDesk).post(address + "/release").statusCode())
        .isEqualTo(412);
    String ofDiaryNow = by(desk).accept("text/calendar").get(address).header("ETag");
    assertThat(by(desk).header("If-Match", ofDiaryNow).post(address + "/release").statusCode())
        .isEqualTo(200);
  }

  private static int known(RequestSpecification as, String tag, String address) {
    return as.header("If-None-Match", tag).get(address).statusCode();
  }

  @Test
  void answersThatDependOnWhoAsksSaySo() {
    String hold = address(held("r-15"));
    String diary =
        "/v1/houses/" + house + "/units/" + pair.get(0) + "/diary?" + HoldExamples.WINDOW;
    for (String address : List.of(hold, "/v1/holds", "/v1/events", diary)) {
      assertThat(by(desk).get(address).header("Vary")).as(address).contains("Authorization");
    }
    for (String open : List.of("/v1/events", diary)) {
      assertThat(given().get(open).header("Vary")).as(open).contains("Authorization");
    }
    assertThat(by(desk).get("/v1/houses").header("Vary")).isEqualTo("Accept, Accept-Encoding");
  }

  @Test
  void holdsAreListedPageByPage() {
    for (int i = 0; i < 3; i++) {
      ObjectNode wish = wish("page-" + i, line(house, SINGLE, 1));
      wish.put("from", "2027-0" + (6 + i) + "-01T10:00:00Z");
      wish.put("to", "2027-0" + (6 + i) + "-02T10:00:00Z");
      assertThat(hold(desk, "page-" + i, wish).statusCode()).isEqualTo(201);
    }
    List<String> seen = new ArrayList<>();
    String token = null;
    do {
      RequestSpecification asking = by(desk).queryParam("page_size", 2);
      Response page =
          (token == null ? asking : asking.queryParam("page_token", token)).get("/v1/holds");
      seen.addAll(page.jsonPath().getList("items.reference", String.class));
      token = page.jsonPath().getString("next_page_token");
    } while (token != null);
    assertThat(seen).containsExactly("page-0", "page-1", "page-2");
    assertThat(
            by(desk)
                .get("/v1/holds?from=2027-06-30T00:00:00Z&to=2027-08-01T10:00:00Z")
                .jsonPath()
                .getList("items.reference", String.class))
        .as("what begins at the end of the period does not belong to it")
        .containsExactly("page-1");
    assertThat(
            publisher(house)
                .get("/v1/holds?state=tentative&house=" + house)
                .jsonPath()
                .getList("items"))
        .hasSize(3);
    assertThat(by(desk).get("/v1/holds?reference=page-2").jsonPath().getList("items")).hasSize(1);
  }

  @Test
  void theDiaryOfAUnitIsOpenButForWhoseItIs() {
    Response made = held("r-14");
    String diary = "/v1/houses/" + house + "/units/" + pair.get(0) + "/diary";
    String june = "?from=2027-06-01T00:00:00Z&to=2027-07-01T00:00:00Z";
    JsonNode open = Ask.tree(given().get(diary + june).asString()).at("/items/0");
    assertThat(open.path("busy_from").asText()).isEqualTo("2027-06-11T08:00:00Z");
    assertThat(open.path("busy_to").asText()).isEqualTo("2027-06-14T13:00:00Z");
    assertThat(open.has("hold")).isFalse();
    assertThat(by(other).get(diary + june).jsonPath().getString("items[0].hold")).isNull();
    assertThat(by(desk).get(diary + june).jsonPath().getString("items[0].hold.reference"))
        .isEqualTo("r-14");
    assertThat(publisher(house).get(diary + june).jsonPath().getString("items[0].hold.id"))
        .isEqualTo(made.jsonPath().getString("id"));
    assertThat(given().get(diary).statusCode()).as("no period").isEqualTo(400);
    assertThat(given().get(diary.replace(pair.get(0), "none") + june).statusCode()).isEqualTo(404);
  }

  @Test
  void theFeedTellsADeskWhatBecameOfItsHolds() {
    String start = lastCursor();
    Response made = held("r-15");
    step(by(desk), made, "confirm");
    await()
        .untilAsserted(
            () ->
                assertThat(kinds(by(desk), start))
                    .containsSubsequence("hold-tentative", "hold-confirmed"));
    assertThat(kinds(by(other), start)).noneMatch(kind -> kind.startsWith("hold-"));
    assertThat(kinds(given(), start)).noneMatch(kind -> kind.startsWith("hold-"));
    assertThat(kinds(publisher(house), start)).contains("hold-confirmed");
  }

  @Test
  void theFeedTellsADeskThatAPromisedUnitIsNotWhatItWas() {
    String start = lastCursor();
    Response made = held("r-31");
    String unit =
        "{\"microphone\": \"%s\", \"matched_group\": \"%s\", \"day_rate_minor\": %d, \"state\": \"%s\"}";
    String group = made.jsonPath().getString("lines[0].units[0].matched_group");
    for (String told :
        List.of(
            unit.formatted(PAIR, group, 9000, "available"),
            unit.formatted(PAIR, group, 9000, "in-repair"))) {
      assertThat(
              publisher(house)
                  .header("If-Match", "*")
                  .body(told)
                  .put("/v1/houses/" + house + "/units/" + pair.get(0))
                  .statusCode())
          .isEqualTo(200);
    }
    await()
        .untilAsserted(
            () ->
                assertThat(unitsChanged(by(desk), start))
                    .as("another rate is no concern of theirs")
                    .containsExactly(
                        Map.of(
                            "house",
                            house,
                            "serial",
                            pair.get(0),
                            "state",
                            "in-repair",
                            "matched_group",
                            group)));
    assertThat(unitsChanged(publisher(house), start)).hasSize(1);
    assertThat(unitsChanged(by(other), start)).isEmpty();
  }

  private static List<Map<String, Object>> unitsChanged(RequestSpecification as, String after) {
    return as.get("/v1/events?limit=500&after=" + after)
        .jsonPath()
        .getList("events.findAll { it.kind == 'hold-unit-changed' }.detail");
  }

  @Test
  void theFeedIsReadInStretchesThatNeverChange() {
    Response first = given().auth().oauth2(Tokens.admin()).get("/v1/events?limit=2");
    assertThat(first.jsonPath().getBoolean("more")).isTrue();
    String next = first.jsonPath().getString("next");
    assertThat(
            given()
                .auth()
                .oauth2(Tokens.admin())
                .get("/v1/events?limit=2")
                .jsonPath()
                .getString("next"))
        .isEqualTo(next);
    Response then = given().auth().oauth2(Tokens.admin()).get("/v1/events?limit=2&after=" + next);
    assertThat(then.jsonPath().getList("events.cursor", String.class))
        .doesNotContainAnyElementsOf(first.jsonPath().getList("events.cursor", String.class));
  }

  private static String lastCursor() {
    String cursor = "0-0";
    boolean more = true;
    while (more) {
      Response stretch = given().get("/v1/events?limit=500&after=" + cursor);
      cursor = stretch.jsonPath().getString("next");
      more = stretch.jsonPath().getBoolean("more");
    }
    return cursor;
  }

  private static List<String> kinds(RequestSpecification as, String after) {
    return as.get("/v1/events?limit=500&after=" + after).jsonPath().getList("events.kind");
  }

  @Test
  void aClosedDoorIsToldWithTheNextOpening() {
    String closed = Kit.house().hours("mon 08:00-17:30").id();
    Response refused = hold(desk, "k-8", wish("r-16", line(closed, SINGLE, 1)));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.jsonPath().getString("errors[0].pointer")).isEqualTo("/from");
    assertThat(refused.jsonPath().getString("errors[0].allowed")).isEqualTo("2027-06-14T06:00:00Z");
    Response unknown = hold(desk, "k-9", wish("r-17", line("nobody", SINGLE, 1)));
    assertThat(unknown.statusCode()).isEqualTo(422);
    assertThat(unknown.jsonPath().getString("errors[0].pointer")).isEqualTo("/lines/0/house");
  }

  @Test
  void aMicrophoneThatNobodyKnowsIsASlipOfThePen() {
    Response refused = hold(desk, "k-10", wish("r-18", line(house, "boathouse/sdc-omni-2", 1)));
    assertThat(refused.statusCode()).isEqualTo(422);
    assertThat(refused.jsonPath().getString("errors[0].pointer")).isEqualTo("/lines/0/microphone");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "reference | \"\"",
        "reference | \"a\\u0000b\"",
        "from      | \"+999999999-01-01T00:00:00Z\"",
        "to        | \"2027-06-11T10:00:00+02:00\"",
        "to        | \"1970-01-01T00:00:00Z\"",
        "lines     | []",
        "lifetime_min | 0",
        "lifetime_min | 40321",
        "second    | \"perhaps\""
      })
  void whatMakesNoSenseIsToldAtItsPlace(String member, String value) {
    ObjectNode wish = wish("r-19", line(house, SINGLE, 1));
    wish.set(member.strip(), Ask.tree(value));
    Response refused = hold(desk, UUID.randomUUID().toString(), wish);
    assertThat(refused.statusCode()).as(refused.asString()).isIn(400, 422);
    assertThat(refused.jsonPath().getString("errors[0].pointer")).startsWith("/" + member.strip());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/v1/holds?from=%2B999999999-01-01T00:00:00Z",
        "/v1/holds?from=1812968400",
        "/v1/holds?state=gone",
        "/v1/holds?page_token=MCB4",
        "/v1/holds?page_size=0",
        "/v1/events?after=x",
        "/v1/events?after=99999999999999999999-1",
        "/v1/events?limit=501"
      })
  void aQueryThatMakesNoSenseIsRefused(String address) {
    Response refused = by(desk).urlEncodingEnabled(false).get(address);
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(400);
    assertThat(refused.jsonPath().getString("errors[0].parameter")).isNotEmpty();
  }

  @Test
  void aTokenOfSomebodysOwnMakingIsRefused() {
    Map<String, List<String>> june =
        Map.of("from", List.of("2027-06-01T00:00:00Z"), "to", List.of("2027-06-30T00:00:00Z"));
    String token = Integer.toHexString(june.hashCode()) + " +1000000000-12-31T23:59:59Z";
    Response refused =
        given()
            .queryParams(june)
            .queryParam("page_token", Base64.getUrlEncoder().encodeToString(token.getBytes(UTF_8)))
            .get("/v1/houses/" + house + "/units/" + pair.get(0) + "/diary");
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(400);
    assertThat(refused.jsonPath().getString("errors[0].detail"))
        .isEqualTo("This token is not ours.");
  }

  @Test
  void aPeriodInWhichNobodyLendsBreaksARuleInAQueryAsInABody() {
    String diary = "/v1/houses/" + house + "/units/" + pair.get(0) + "/diary";
    for (String address :
        List.of(
            "/v1/holds?from=9999-12-31T23:59:59Z",
            "/v1/holds?to=1999-12-31T00:00:00Z",
            diary + "?from=2027-06-01T00:00:00Z&to=2200-01-01T00:00:00Z",
            diary + "?from=2027-06-02T00:00:00Z&to=2027-06-01T00:00:00Z")) {
      Response refused = by(desk).urlEncodingEnabled(false).get(address);
      assertThat(refused.statusCode()).as(address + refused.asString()).isEqualTo(422);
      assertThat(refused.jsonPath().getString("errors[0].parameter")).isIn("from", "to");
    }
  }
}
