package org.standoff.contract;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.fixture.Ask;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.ExampleCaller;
import org.standoff.fixture.ScenarioHouses;
import org.standoff.fixture.Tokens;

/** The callers among the examples do what they say. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class ExampleCallersTest {

  private static final String OSTREL = "ostrel-hire";
  private static final String DESK = "saltlight-desk";
  private static final String PERIOD = "from=2027-06-11T08:00:00Z&to=2027-06-14T09:00:00Z";

  @TempDir Path folder;

  @BeforeEach
  void thereIsPythonAndNoHouse() {
    assumeThat(ExampleCaller.canRun()).isTrue();
    ScenarioHouses.forget();
  }

  @AfterEach
  void leaveNothing() {
    ScenarioHouses.forget();
  }

  @ParameterizedTest
  @ValueSource(strings = {"settings.py", "stereo.py", "floor.py"})
  void aCallerThatOnlyCalculatesNeedsNoToken(String script) {
    ExampleCaller.Ended ended = ExampleCaller.run(script, "");
    assertThat(ended.exitCode()).as(ended.err()).isZero();
    assertThat(ended.out()).isNotBlank();
  }

  @Test
  void theHousesOfTheDemoComeByOneCall() {
    String told = load();
    assertThat(told)
        .contains(OSTREL + ": terms made; units: 31 added, 0 changed, 0 retired, 0 unchanged")
        .contains("vennick-loan-store: terms made; units: 26 added")
        .contains("omnis-until-saturday: confirmed", "both-ribbons-second: waiting");
    JsonNode omnis = free("boathouse/sdc-omni-1&quantity=2&matched=true", OSTREL);
    assertThat(omnis.path("free_count").asInt()).isZero();
    assertThat(omnis.at("/next_free/from").asText())
        .as(omnis.toString())
        .isEqualTo("2027-06-12T14:00:00+02:00");
    assertThat(free("boathouse/ldc-multi-1", OSTREL).path("free_count").asInt()).isEqualTo(2);
    assertThat(free("boathouse/clip-sup-1", OSTREL).path("free_count").asInt()).isEqualTo(2);
    assertThat(free("boathouse/rib-8-1", "vennick-loan-store").path("free_count").asInt())
        .isEqualTo(1);
    assertThat(
            free("boathouse/rib-8-1&quantity=2", "vennick-loan-store")
                .at("/next_free/from")
                .asText())
        .as("held until Thursday noon, turned round for a day")
        .isEqualTo("2027-06-11T12:00:00+02:00");
  }

  @Test
  void loadedTwiceTheyAreAsBefore() {
    load();
    String before = state();
    String told = load();
    assertThat(told)
        .contains(OSTREL + ": terms as before; units: 0 added, 0 changed, 0 retired, 31 unchanged")
        .contains("omnis-until-saturday: confirmed as before")
        .contains("both-ribbons-second: waiting as before");
    assertThat(state()).isEqualTo(before);
  }

  @Test
  void theBookingClientIsToldOfAShortageAndTakesASubstitute() {
    load();
    ExampleCaller.Ended ended = ExampleCaller.run("booking_client.py", Tokens.booker(DESK));
    assertThat(ended.exitCode()).as(ended.err()).isZero();
    assertThat(ended.out())
        .contains("2 x boathouse/sdc-omni-1: short, 0 free, again from 2027-06-12T14:00:00+02:00")
        .contains("refused: One line can't be met")
        .contains("instead of 2 x boathouse/sdc-omni-1: boathouse/")
        .contains("held as saltlight-2027-06: tentative", "confirmed: confirmed");
    assertThat(holds("saltlight-2027-06")).hasSize(1);
    assertThat(holds("saltlight-2027-06").at("/0/state").asText()).isEqualTo("confirmed");
  }

  @Test
  void runAgainTheBookingClientMakesNoSecondHold() {
    load();
    ExampleCaller.run("booking_client.py", Tokens.booker(DESK));
    JsonNode before = holds("saltlight-2027-06");
    ExampleCaller.Ended again = ExampleCaller.run("booking_client.py", Tokens.booker(DESK));
    assertThat(again.exitCode()).as(again.err()).isZero();
    assertThat(again.out()).contains("held as saltlight-2027-06: confirmed");
    assertThat(holds("saltlight-2027-06")).isEqualTo(before);
  }

  @Test
  void theBookingClientEndsWithTheReasonWhereItMayNotHold() {
    load();
    ExampleCaller.Ended ended = ExampleCaller.run("booking_client.py", Tokens.publisher(OSTREL));
    assertThat(ended.exitCode()).isEqualTo(1);
    assertThat(ended.err()).contains("403");
  }

  @Test
  void theHouseClientTellsEveryFaultOfASheetAndPublishesNothing() throws IOException {
    load();
    String before = state();
    String spoilt =
        sheet()
            .replace("ldc-card-1-1,boathouse/ldc-card-1", "ldc-card-1-1,boathouse/ldc-crad-1")
            .replace("available,1500", "available,15.00");
    ExampleCaller.Ended ended = publish(spoilt);
    assertThat(ended.exitCode()).isEqualTo(1);
    assertThat(ended.err())
        .contains("row 5, microphone: ", "found: boathouse/ldc-crad-1")
        .contains("row 30, day_rate_minor: ", "found: 15.00");
    assertThat(state()).isEqualTo(before);
  }

  @Test
  void theHouseClientPublishesWhatChanged() throws IOException {
    load();
    ExampleCaller.Ended ended =
        publish(sheet() + "rib-8-1-2,boathouse/rib-8-1,,in-repair,1500,new ribbon,,\n");
    assertThat(ended.exitCode()).as(ended.err()).isZero();
    assertThat(ended.out())
        .contains("ostrel-hire, tried:", "ostrel-hire, published:")
        .containsPattern("added +1 +rib-8-1-2");
    assertThat(
            publish(sheet() + "rib-8-1-2,boathouse/rib-8-1,,in-repair,1500,new ribbon,,\n").out())
        .contains("Nothing to publish.")
        .doesNotContain("published:");
  }

  private static String load() {
    ExampleCaller.Ended ended = ExampleCaller.run("boathouse_houses.py", Tokens.admin());
    assertThat(ended.exitCode()).as(ended.err()).isZero();
    return ended.out();
  }

  private ExampleCaller.Ended publish(String sheet) throws IOException {
    Path file = Files.writeString(folder.resolve("kit.csv"), sheet);
    return ExampleCaller.run("house_client.py", Tokens.publisher(OSTREL), OSTREL, file.toString());
  }

  private static String sheet() throws IOException {
    return Files.readString(Path.of("openapi", "examples", "houses", OSTREL + ".csv"));
  }

  private static JsonNode free(String microphone, String house) {
    return Ask.tree(
            given()
                .urlEncodingEnabled(false)
                .get(
                    "/v1/availability?microphone=" + microphone + "&houses=" + house + "&" + PERIOD)
                .asString())
        .at("/lines/0/houses/0");
  }

  private static JsonNode holds(String reference) {
    return Ask.tree(
            given()
                .auth()
                .oauth2(Tokens.booker(DESK))
                .queryParam("reference", reference)
                .get("/v1/holds")
                .asString())
        .path("items");
  }

  /** Everything that a change would show in. */
  private static String state() {
    StringBuilder state = new StringBuilder();
    for (String path :
        new String[] {"/v1/houses/" + OSTREL, "/v1/houses/" + OSTREL + "/units", "/v1/holds"}) {
      state.append(given().auth().oauth2(Tokens.admin()).get(path).asString());
    }
    return state.toString();
  }
}
