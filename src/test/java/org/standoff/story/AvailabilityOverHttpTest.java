package org.standoff.story;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;
import static org.hamcrest.Matchers.equalTo;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import jakarta.inject.Inject;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.answers.kit.ShortageSubstitutes;
import org.standoff.answers.kit.Substitute;
import org.standoff.fixture.Ask;
import org.standoff.fixture.BusyUnit;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Holding;
import org.standoff.fixture.Kit;
import org.standoff.fixture.ScenarioHouses;
import org.standoff.kit.Caller;
import org.standoff.kit.Period;
import org.standoff.kit.Role;
import org.standoff.kit.hold.HoldWish;
import org.standoff.kit.hold.Holds;
import org.standoff.kit.hold.Shortage;
import org.standoff.kit.hold.WantedLine;

/**
 * The session of the Saltlight Twelve, Friday 11 June 2027 10:00 to Monday 11:00, asked from the
 * two houses of the demo. Counts and charges are reckoned by hand: Ostrel charges 3.5 days, Vennick
 * 3, and at least 60.00.
 */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class AvailabilityOverHttpTest {
  private static final String FRIDAY = "2027-06-11T10:00:00+02:00";
  private static final String MONDAY = "2027-06-14T11:00:00+02:00";

  private static final String FRIDAY_UTC = "2027-06-11T08:00:00Z";
  private static final String MONDAY_UTC = "2027-06-14T09:00:00Z";

  private static ScenarioHouses houses;

  @Inject Holds holds;
  @Inject ShortageSubstitutes shortageSubstitutes;

  @BeforeEach
  void standTheHouses() {
    if (houses == null) {
      houses = ScenarioHouses.withHolds();
    }
  }

  @Test
  void theMatchedOmnisAreOutUntilSaturdayAndTheOtherHouseHasSinglesOnly() {
    JsonNode line = session(line("sdc-omni-1", 2, true)).answer().at("/lines/0");
    JsonNode ostrel = line.at("/houses/0");
    assertThat(ostrel.path("enough").asBoolean()).isFalse();
    assertThat(ostrel.path("free_count").asInt()).isZero();
    assertThat(ostrel.path("unit_count").asInt()).isEqualTo(2);
    assertThat(ostrel.path("short_periods")).hasSize(1);
    assertThat(ostrel.at("/short_periods/0/from").asText()).isEqualTo("2027-06-11T10:00:00+02:00");
    assertThat(ostrel.at("/short_periods/0/to").asText()).isEqualTo("2027-06-12T14:00:00+02:00");
    // 73 hours from Saturday 14:00
    assertThat(ostrel.at("/next_free/from").asText()).isEqualTo("2027-06-12T14:00:00+02:00");
    assertThat(ostrel.at("/next_free/to").asText()).isEqualTo("2027-06-15T15:00:00+02:00");
    JsonNode vennick = line.at("/houses/1");
    assertThat(vennick.path("enough").asBoolean()).isFalse();
    assertThat(vennick.path("free_count").asInt()).isEqualTo(2);
    assertThat(vennick.path("free_group_count").asInt()).isZero();
    assertThat(vennick.path("next_free").isMissingNode()).isTrue();
  }

  @Test
  void whatIsOutAllMonthAndFridayToSundayIsCountedOff() {
    JsonNode lines =
        session(
                line("ldc-multi-1", 2, false),
                line("clip-sup-1", 3, false),
                line("rib-8-1", 1, false))
            .answer()
            .path("lines");
    assertThat(freeCounts(lines, 0)).containsExactly(2, 2, 1);
    assertThat(freeCounts(lines, 1)).containsExactly(2, 3, 2);
    assertThat(lines.at("/1/houses/0/enough").asBoolean()).isFalse();
    assertThat(lines.at("/1/houses/1/enough").asBoolean()).isTrue();
  }

  @Test
  void theDropBoxTakesKitOnMondayAndItIsCheckedInOnTuesday() {
    JsonNode houses = session(line("rib-8-1", 1, false)).answer().path("houses");
    assertThat(houses.at("/0/returned").asText()).isEqualTo("over-the-counter");
    assertThat(houses.at("/0/charged_days").asDouble()).isEqualTo(3.5);
    assertThat(houses.at("/1/returned").asText()).isEqualTo("drop-box");
    assertThat(houses.at("/1/checked_in_at").asText()).isEqualTo("2027-06-15T09:00:00+02:00");
    assertThat(houses.at("/1/charged_days").asDouble()).isEqualTo(3);
    assertThat(houses.at("/1/possible").asBoolean()).isTrue();
  }

  @Test
  void noSplitUsesAHouseWhoseDoorIsClosed() {
    // Vennick is closed on Mondays, Ostrel on Sundays, and Ostrel has no drop-box
    JsonNode mondayOn =
        asked("2027-06-14T11:00:00+02:00", "2027-06-15T11:00:00+02:00", line("rib-8-1", 1, false))
            .answer();
    assertThat(mondayOn.at("/houses/1/collection_open").asBoolean()).isFalse();
    assertThat(mondayOn.at("/houses/1/collection_from").asText())
        .isEqualTo("2027-06-15T09:00:00+02:00");
    assertThat(mondayOn.at("/fewest_houses/parts/0/house").asText()).isEqualTo(houses.ostrel());
    JsonNode untilSunday =
        asked(FRIDAY, "2027-06-13T11:00:00+02:00", line("rib-8-1", 1, false)).answer();
    assertThat(untilSunday.at("/houses/0/returned").asText()).isEqualTo("refused");
    assertThat(untilSunday.at("/houses/0/possible").asBoolean()).isFalse();
    assertThat(untilSunday.at("/fewest_houses/parts/0/house").asText()).isEqualTo(houses.vennick());
  }

  @ParameterizedTest(name = "at {0}")
  @CsvSource({
    "/microphone, {\"microphone\": \"core/\\u0000\"}",
    "/lines/0/microphone, {\"lines\": [{\"microphone\": \"\\u0000\"}]}",
    "/houses/0, '{\"microphone\": \"core/kick\", \"houses\": [\"\\u001f\"]}'"
  })
  void aNameWithControlCharactersIsToldWhereItStands(String pointer, String beside) {
    String period = "\"from\": \"" + FRIDAY + "\", \"to\": \"2027-06-14T11:00:00+02:00\", ";
    Response refused = Ask.post("/v1/availability", beside.replaceFirst("\\{", "{" + period));
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(400);
    assertThat(refused.jsonPath().getString("errors[0].pointer")).isEqualTo(pointer);
    assertThat(refused.jsonPath().getString("errors[0].code")).isEqualTo("WRONG_FORM");
  }

  @Test
  void theFewestHousesAndTheCheapestWayArePricedLineByLine() {
    // all from Ostrel: 4 x 4.00 x 3.5 + 15.00 x 3.5 + 11.00 x 3.5 = 147.00;
    // dynamics and ribbon from Vennick: 4 x 3.00 x 3 + 13.00 x 3 = 75.00, wide 38.50: 113.50
    JsonNode answer =
        session(
                line("dyn-card-1", 4, false),
                line("rib-8-1", 1, false),
                line("sdc-wide-1", 1, false))
            .answer();
    JsonNode fewest = answer.path("fewest_houses");
    assertThat(fewest.path("house_count").asInt()).isEqualTo(1);
    assertThat(charges(fewest)).containsExactly(5600, 5250, 3850);
    assertThat(fewest.at("/totals/0/charge_minor").asInt()).isEqualTo(14_700);
    JsonNode cheapest = answer.at("/cheapest/0");
    assertThat(charges(cheapest)).containsExactly(3600, 3900, 3850);
    assertThat(cheapest.at("/totals/0/charge_minor").asInt()).isEqualTo(11_350);
    assertThat(cheapest.at("/totals/0/currency").asText()).isEqualTo("EUR");
    assertThat(cheapest.path("unmet")).isEmpty();
  }

  @Test
  void forTheOmniPairTheMultiPatternAndTheUnmatchedSinglesAreNamedWithWhatIsLost() {
    JsonNode houses = session(line("sdc-omni-1", 2, true)).answer().at("/lines/0/houses");
    // 140 dB and one pad of 10 against 135 and 20; 12 against 10 dBA; 20 lg(17/13) = 2.33
    JsonNode multi = houses.at("/0/substitutes/0");
    assertThat(multi.path("microphone").asText()).isEqualTo("boathouse/ldc-multi-1");
    assertThat(multi.path("maximum_change_db").asDouble()).isEqualTo(-5);
    assertThat(multi.path("limit_change_db").asDouble()).isEqualTo(5);
    assertThat(multi.path("self_noise_change_db").asDouble()).isEqualTo(-2);
    assertThat(multi.path("sensitivity_change_db").asDouble()).isCloseTo(2.33, within(0.01));
    assertThat(multi.path("lacks")).isEmpty();
    assertThat(multi.path("matched").asBoolean()).isFalse();
    assertThat(texts(multi.path("loses"))).containsExactly("not a matched group");
    assertThat(multi.path("free_count").asInt()).isEqualTo(2);
    JsonNode itself = houses.at("/1/substitutes/0");
    assertThat(itself.path("microphone").asText()).isEqualTo("boathouse/sdc-omni-1");
    assertThat(itself.path("limit_change_db").asDouble()).isZero();
    assertThat(itself.path("self_noise_change_db").asDouble()).isZero();
    assertThat(texts(itself.path("loses"))).containsExactly("not a matched group");
  }

  @Test
  void aSubstituteThatPhantomDestroysComesWithItsCaution() {
    Kit kit = Kit.house();
    kit.units("boathouse/rib-8-1", 1);
    JsonNode found =
        asked(FRIDAY, MONDAY, line("rib-act-1", 1, false))
            .with("houses", List.of(kit.id()))
            .answer()
            .at("/lines/0/houses/0/substitutes/0");
    assertThat(found.path("microphone").asText()).isEqualTo("boathouse/rib-8-1");
    assertThat(found.at("/cautions/0/code").asText()).isEqualTo("phantom-on-passive-ribbon");
    assertThat(found.at("/powering_change/wanted").asText()).isEqualTo("p48");
    // 132 against 128 dB, no pads
    assertThat(found.path("limit_change_db").asDouble()).isEqualTo(-4);
    assertThat(texts(found.path("loses"))).contains("4.0 dB less headroom");
  }

  @Test
  void nobodyIsNamedWhereNoSubstituteIsWantedOrNothingIsShort() {
    JsonNode none =
        session(line("sdc-omni-1", 2, true)).with("substitute_count", 0).answer().at("/lines/0");
    assertThat(none.at("/houses/0/substitutes")).isEmpty();
    JsonNode enough = session(line("rib-8-1", 1, false)).answer().at("/lines/0");
    assertThat(enough.at("/houses/0/substitutes")).isEmpty();
  }

  @Test
  void aQueryAsksForOneModelAndTheAnswerIsNeverKept() {
    given()
        .queryParam("microphone", "boathouse/clip-sup-1")
        .queryParam("quantity", 3)
        .queryParam("from", FRIDAY)
        .queryParam("to", MONDAY)
        .queryParam("houses", houses.vennick())
        .get("/v1/availability")
        .then()
        .statusCode(200)
        .header("Cache-Control", equalTo("no-store"))
        .body("lines[0].houses[0].free_count", equalTo(3))
        .body("cheapest[0].totals[0].charge_minor", equalTo(6300));
  }

  @Test
  void aSheetHasARowALineAndHouse() {
    String sheet =
        session(line("sdc-omni-1", 2, true), line("rib-8-1", 1, false))
            .send("text/csv")
            .then()
            .statusCode(200)
            .extract()
            .asString();
    assertThat(sheet.lines()).hasSize(5);
    assertThat(sheet.lines().skip(1).findFirst().orElseThrow().replace("\"", ""))
        .isEqualTo(
            "1,boathouse/sdc-omni-1,2,true,"
                + houses.ostrel()
                + ",false,0,0,2,2027-06-12T14:00+02:00,2027-06-15T15:00+02:00,"
                + "boathouse/ldc-multi-1");
  }

  @Test
  void aHoldMadeNowIsSeenAtOnceAndTheRevisionMoves() {
    Kit kit = Kit.house();
    String serial = kit.units("boathouse/sdc-card-1", 1).get(0);
    Ask ask = asked(FRIDAY, MONDAY, line("sdc-card-1", 1, false)).with("houses", List.of(kit.id()));
    JsonNode before = ask.answer();
    assertThat(before.at("/lines/0/houses/0/free_count").asInt()).isEqualTo(1);
    BusyUnit.confirmed(kit.id(), serial, "2027-06-12T00:00:00Z", "2027-06-12T01:00:00Z");
    JsonNode after = ask.answer();
    assertThat(after.at("/lines/0/houses/0/free_count").asInt()).isZero();
    assertThat(after.path("kit_revision")).isNotEqualTo(before.path("kit_revision"));
  }

  @ParameterizedTest
  @CsvSource({
    "houses, '[\"no-such-house\"]', /houses/0",
    "lines, '[{\"microphone\": \"boathouse/sdc-omi-1\"}]', /lines/0/microphone",
    "to, '\"2027-06-11T10:00:00+02:00\"', /to",
    "to, '\"2028-06-12T10:00:01+02:00\"', /to",
    "from, '\"1999-12-31T23:59:59Z\"', /from",
    "microphone, '\"boathouse/sdc-omni-1\"', /lines",
    "quantity, '2', /quantity",
  })
  void whatCantBeAskedIsRefusedAtItsPlace(String member, String value, String pointer) {
    assertThat(session(line("rib-8-1", 1, false)).with(member, Ask.tree(value)).faults(422))
        .contains(pointer);
  }

  @Test
  void aHouseMayHaveWhatNoCatalogueKnows() {
    Kit kit = Kit.house();
    kit.units("attic/old-thing", 2);
    JsonNode line =
        Ask.at("/v1/availability")
            .with("microphone", "attic/old-thing")
            .with("from", FRIDAY)
            .with("to", MONDAY)
            .with("houses", List.of(kit.id()))
            .answer()
            .at("/lines/0/houses/0");
    assertThat(line.path("free_count").asInt()).isEqualTo(2);
  }

  @Test
  void settingsRankOnlyWhatIsFreeAndSayWhyTheRestIsNot() {
    JsonNode answer =
        violin()
            .with(
                "microphones",
                List.of("boathouse/sdc-omni-1", "boathouse/sdc-card-1", "boathouse/ldc-card-1"))
            .with("available", available(houses.ostrel()))
            .answer();
    assertThat(StreamSupport.stream(answer.path("recommendations").spliterator(), false))
        .extracting(one -> one.path("microphone").asText())
        .containsExactlyInAnyOrder("boathouse/sdc-card-1", "boathouse/ldc-card-1");
    JsonNode refused = answer.at("/why_not/0");
    assertThat(refused.path("microphone_id").asText()).isEqualTo("boathouse/sdc-omni-1");
    assertThat(refused.path("requirement").asText()).isEqualTo("free");
    assertThat(answer.at("/basis/kit_revision").asText()).isNotEmpty();
  }

  @Test
  void settingsForAPairWantTwoUnits() {
    Ask pair =
        violin()
            .with("microphone", "boathouse/ldc-card-1")
            .with("second_microphone", Map.of("distance_m", 0.6))
            .with("available", available(houses.ostrel()));
    assertThat(pair.answer().path("recommendations")).isEmpty();
    assertThat(pair.answer().at("/why_not/0/requirement").asText()).isEqualTo("free");
  }

  @Test
  void aHouseThatIsClosedWhenKitIsToLeaveOrToReturnLendsNothing() {
    // Ostrel is closed on Sundays and has no drop-box
    Map<String, Object> untilSunday =
        Map.of(
            "from", FRIDAY, "to", "2027-06-13T11:00:00+02:00", "houses", List.of(houses.ostrel()));
    JsonNode answer =
        violin().with("microphone", "boathouse/sdc-card-1").with("available", untilSunday).answer();
    assertThat(answer.path("recommendations")).isEmpty();
    assertThat(answer.at("/why_not/0/because").asText())
        .isEqualTo("no house that lends in the period has one");
  }

  @Test
  void settingsThatDoNotAskForKitDoNotNameItsRevisionAndMayBeKept() {
    given()
        .queryParam("source", "core/violin")
        .queryParam("placement", "spot")
        .queryParam("distance_m", 0.5)
        .queryParam("microphone", "core/sdc-card-1")
        .queryParam("preamp", "core/preamp-16")
        .get("/v1/settings")
        .then()
        .statusCode(200)
        .header("Cache-Control", equalTo("no-cache"))
        .body("basis.containsKey('kit_revision')", equalTo(false));
    given()
        .queryParam("source", "core/violin")
        .queryParam("placement", "spot")
        .queryParam("distance_m", 0.5)
        .queryParam("microphone", "boathouse/sdc-card-1")
        .queryParam("preamp", "core/preamp-16")
        .queryParam("available.from", FRIDAY)
        .queryParam("available.to", MONDAY)
        .queryParam("available.houses", houses.ostrel())
        .get("/v1/settings")
        .then()
        .statusCode(200)
        .header("Cache-Control", equalTo("no-store"))
        .body("basis.containsKey('kit_revision')", equalTo(true));
  }

  @Test
  void aFaultyPeriodOfAvailableIsToldAtItsPlace() {
    Map<String, Object> backwards = Map.of("from", MONDAY, "to", FRIDAY);
    assertThat(
            violin()
                .with("microphone", "boathouse/sdc-card-1")
                .with("available", backwards)
                .faults(422))
        .contains("/available/to");
  }

  @Test
  void aFitUsesOnlyWhatIsFree() {
    Ask fit =
        Ask.at("/v1/stereo/fit")
            .with("ensemble", "boathouse/saltlight-twelve")
            .with("player_ids", List.of("trumpet", "alto", "trombone"))
            .with("stand", Map.of("position_m", Map.of("x", 9.1, "y", 6.7, "z", 2)))
            .with("bar_most_m", 0.6)
            .with(
                "microphones",
                List.of(
                    Map.of("microphone", "boathouse/sdc-omni-1", "count", 2),
                    Map.of("microphone", "boathouse/ldc-multi-1", "count", 2)))
            .with("wish", Map.of("fill_pct", 97));
    JsonNode free = fit.with("available", available(houses.ostrel())).answer();
    assertThat(free.path("solutions")).isNotEmpty();
    assertThat(free.findValuesAsText("microphone")).doesNotContain("boathouse/sdc-omni-1");
    assertThat(free.at("/basis/kit_revision").asText()).isNotEmpty();
  }

  @Test
  void aRefusedHoldIsToldWhatCouldStandIn() {
    Shortage shortage = null;
    try {
      Holding.once(
          holds,
          new Caller("desk", Set.of(Role.BOOKER), Optional.empty()),
          new HoldWish(
              "substitutes",
              new Period(Instant.parse(FRIDAY_UTC), Instant.parse(MONDAY_UTC)),
              List.of(
                  new WantedLine(houses.ostrel(), "boathouse/rib-8-1", 1, false),
                  new WantedLine(houses.ostrel(), "boathouse/clip-sup-1", 3, false)),
              Duration.ofHours(1),
              false));
    } catch (Shortage refused) {
      shortage = refused;
    }
    assertThat(shortage).isNotNull();
    // the line that is short is the second
    assertThat(shortageSubstitutes.of(shortage)).containsOnlyKeys(1);
    // a clip supercardioid of 146 dB and 27 dBA: a dynamic supercardioid of three lacks no pattern
    assertThat(shortageSubstitutes.of(shortage).get(1).get(0).microphone())
        .isEqualTo("boathouse/dyn-sup-1");
  }

  @Test
  void whatAnotherLineOfTheWishWantsCantStandIn() {
    Kit kit = Kit.house();
    kit.units("boathouse/dyn-sup-1", 2);
    kit.units("boathouse/dyn-card-1", 2);
    Ask alone = asked(FRIDAY, MONDAY, line("clip-sup-1", 1, false));
    Ask besides = asked(FRIDAY, MONDAY, line("clip-sup-1", 1, false), line("dyn-sup-1", 2, false));
    assertThat(standIns(alone.with("houses", List.of(kit.id()))))
        .containsExactly("boathouse/dyn-sup-1", "boathouse/dyn-card-1");
    assertThat(standIns(besides.with("houses", List.of(kit.id()))))
        .containsExactly("boathouse/dyn-card-1");

    Shortage shortage =
        catchThrowableOfType(
            Shortage.class,
            () ->
                Holding.once(
                    holds,
                    new Caller("desk", Set.of(Role.BOOKER), Optional.empty()),
                    new HoldWish(
                        "others",
                        new Period(Instant.parse(FRIDAY_UTC), Instant.parse(MONDAY_UTC)),
                        List.of(
                            new WantedLine(kit.id(), "boathouse/clip-sup-1", 1, false),
                            new WantedLine(kit.id(), "boathouse/dyn-sup-1", 2, false)),
                        Duration.ofHours(1),
                        false)));
    assertThat(shortageSubstitutes.of(shortage).get(0))
        .extracting(Substitute::microphone)
        .containsExactly("boathouse/dyn-card-1");
  }

  private static List<String> standIns(Ask ask) {
    List<String> microphones = new ArrayList<>();
    ask.answer()
        .at("/lines/0/houses/0/substitutes")
        .forEach(one -> microphones.add(one.path("microphone").asText()));
    return microphones;
  }

  private static Ask violin() {
    return Ask.settings()
        .with("source", "core/violin")
        .with("placement", "spot")
        .with("distance_m", 0.5)
        .with("preamp", "boathouse/recorder");
  }

  private static Map<String, Object> available(String house) {
    return Map.of("from", FRIDAY, "to", MONDAY, "houses", List.of(house));
  }

  @SafeVarargs
  private static Ask session(Map<String, Object>... lines) {
    return asked(FRIDAY, MONDAY, lines);
  }

  @SafeVarargs
  private static Ask asked(String from, String to, Map<String, Object>... lines) {
    return Ask.at("/v1/availability")
        .with("from", from)
        .with("to", to)
        .with("houses", List.of(houses.ostrel(), houses.vennick()))
        .with("lines", List.of(lines));
  }

  private static Map<String, Object> line(String model, int quantity, boolean matched) {
    return Map.of("microphone", "boathouse/" + model, "quantity", quantity, "matched", matched);
  }

  private static List<Integer> freeCounts(JsonNode lines, int house) {
    List<Integer> counts = new ArrayList<>();
    lines.forEach(line -> counts.add(line.path("houses").get(house).path("free_count").asInt()));
    return counts;
  }

  private static List<Integer> charges(JsonNode way) {
    List<Integer> charges = new ArrayList<>();
    way.path("parts").forEach(part -> charges.add(part.path("charge_minor").asInt()));
    return charges;
  }

  private static List<String> texts(JsonNode list) {
    List<String> texts = new ArrayList<>();
    list.forEach(text -> texts.add(text.asText()));
    return texts;
  }
}
