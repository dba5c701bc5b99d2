package org.standoff.rest.kit;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
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
class HousesOverHttpTest {
  @Inject DataSource dataSource;

  private final String house = "h-" + UUID.randomUUID();

  @BeforeEach
  void theTablesAreThere() {
    Kit.house().id();
  }

  @Test
  void aHouseIsMadeReadListedAndChanged() {
    Response made = put(KitExamples.TERMS);
    assertThat(made.statusCode()).as(made.asString()).isEqualTo(201);
    assertThat(made.jsonPath().getString("id")).isEqualTo(house);
    assertThat(made.jsonPath().getInt("turn_round_min")).isEqualTo(240);
    assertThat(made.jsonPath().getDouble("weekend_days")).isEqualTo(1.5);
    assertThat(made.jsonPath().getString("hours[5].day")).isEqualTo("saturday");
    assertThat(made.jsonPath().getString("hours[5].closes")).isEqualTo("17:30");
    Response read = given().get("/v1/houses/" + house);
    assertThat(read.asString()).isEqualTo(made.asString());
    assertThat(plain(read)).isEqualTo(made.jsonPath().getString("etag"));
    assertThat(listed()).contains(house);
    Response changed = changing(read.header("ETag")).body(with("turn_round_min", "60")).put(path());
    assertThat(changed.statusCode()).isEqualTo(200);
    assertThat(changed.jsonPath().getInt("turn_round_min")).isEqualTo(60);
    assertThat(changed.jsonPath().getInt("revision")).isEqualTo(2);
  }

  @Test
  void theSameTermsAgainChangeNothing() {
    String tag = put(KitExamples.TERMS).header("ETag");
    Response again = changing(tag).body(KitExamples.TERMS).put(path());
    assertThat(again.statusCode()).isEqualTo(200);
    assertThat(again.header("ETag")).isEqualTo(tag);
  }

  @Test
  void aChangeNamesTheStateThatItWasMadeFor() {
    String tag = put(KitExamples.TERMS).header("ETag");
    assertThat(put(with("turn_round_min", "1")).statusCode()).isEqualTo(428);
    assertThat(
            publishing()
                .header("If-None-Match", "*")
                .body(KitExamples.TERMS)
                .put(path())
                .statusCode())
        .isEqualTo(412);
    Response stale = changing("\"other\"").body(KitExamples.TERMS).put(path());
    assertThat(stale.statusCode()).isEqualTo(412);
    assertThat(stale.header("ETag")).isEqualTo(tag.replace("-gzip", ""));
    Response nowhere =
        given()
            .auth()
            .oauth2(Tokens.admin())
            .contentType("application/json")
            .header("If-Match", "*")
            .body(KitExamples.TERMS)
            .put(path() + "-x");
    assertThat(nowhere.statusCode()).isEqualTo(412);
  }

  @ParameterizedTest
  @ValueSource(strings = {"17:30", "24:00"})
  void theTermsAreTakenBackAsTheyWereRead(String closes) {
    put(KitExamples.TERMS.replace("17:30", closes));
    Response read = given().get(path());
    Response same = changing(read.header("ETag")).body(read.asString()).put(path());
    assertThat(same.statusCode()).as(same.asString()).isEqualTo(200);
    assertThat(same.asString()).isEqualTo(read.asString());
    String edited = read.asString().replace("\"turn_round_min\":240", "\"turn_round_min\":60");
    Response changed = changing(read.header("ETag")).body(edited).put(path());
    assertThat(changed.jsonPath().getInt("turn_round_min")).isEqualTo(60);
    assertThat(changed.jsonPath().getInt("revision")).isEqualTo(2);
  }

  @Test
  void theTermsOfAnotherHouseAreRefused() {
    put(KitExamples.TERMS);
    Response read = given().get(path());
    String foreign = read.asString().replace("\"id\":\"" + house, "\"id\":\"another");
    Response refused = changing(read.header("ETag")).body(foreign).put(path());
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(400);
    JsonNode fault = Ask.tree(refused.asString()).path("errors").path(0);
    assertThat(fault.path("pointer").asText()).isEqualTo("/id");
    assertThat(fault.path("code").asText()).isEqualTo("CONTRADICTION");
    assertThat(fault.path("found").asText()).isEqualTo("another");
    assertThat(fault.path("allowed").asText()).isEqualTo(house);
  }

  @Test
  void nobodyElseChangesAHouse() {
    assertThat(
            given()
                .contentType("application/json")
                .body(KitExamples.TERMS)
                .put(path())
                .statusCode())
        .isEqualTo(401);
    for (String token : new String[] {Tokens.publisher("other"), Tokens.booker("desk")}) {
      Response refused =
          given()
              .auth()
              .oauth2(token)
              .contentType("application/json")
              .body(KitExamples.TERMS)
              .put(path());
      assertThat(refused.statusCode()).isEqualTo(403);
    }
    assertThat(given().get(path()).statusCode()).isEqualTo(404);
  }

  @ParameterizedTest(name = "{0}: {1} is {3} at {2}")
  @CsvSource(
      delimiter = '|',
      value = {
        "zone | \"Europe/Viena\" | /zone | 422 | UNKNOWN_VALUE",
        "zone | \"+02:00\" | /zone | 422 | UNKNOWN_VALUE",
        "currency | \"EUX\" | /currency | 422 | UNKNOWN_VALUE",
        "currency | \"eur\" | /currency | 400 | WRONG_FORM",
        "title | \" \" | /title | 400 | MISSING",
        "title | \"a\\u0000b\" | /title | 400 | WRONG_FORM",
        "title | \"a\\ud800b\" | /title | 400 | WRONG_FORM",
        "turn_round_min | 40321 | /turn_round_min | 400 | OUT_OF_RANGE",
        "weekend_days | 2.01 | /weekend_days | 400 | OUT_OF_RANGE",
        "minimum_charge_minor | -1 | /minimum_charge_minor | 400 | OUT_OF_RANGE",
        "hours | [{\"day\":\"monday\",\"opens\":\"9:00\",\"closes\":\"10:00\"}] | /hours/0/opens"
            + " | 400 | WRONG_FORM",
        "hours | [{\"day\":\"monday\",\"opens\":\"10:00\",\"closes\":\"10:00\"}] |"
            + " /hours/0/closes | 422 | CONTRADICTION",
        "hours | [{\"day\":\"monday\",\"opens\":\"10:00\",\"closes\":\"00:00\"}] |"
            + " /hours/0/closes | 422 | CONTRADICTION",
        "hours | [{\"day\":\"monday\",\"opens\":\"08:00\",\"closes\":\"12:00\"},"
            + "{\"day\":\"monday\",\"opens\":\"11:59\",\"closes\":\"24:00\"}] | /hours/1/opens"
            + " | 422 | CONTRADICTION",
        "hours | [{\"day\":\"mon\",\"opens\":\"08:00\",\"closes\":\"12:00\"}] | /hours/0/day |"
            + " 400 | UNKNOWN_VALUE",
        "opening | 1 | /opening | 400 | UNKNOWN_NAME",
      })
  void termsThatMeanNothingAreToldWithTheirPlace(
      String member, String value, String pointer, int status, String code) {
    Response refused = put(with(member, value));
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(status);
    JsonNode fault = Ask.tree(refused.asString()).path("errors").path(0);
    assertThat(fault.path("pointer").asText()).isEqualTo(pointer);
    assertThat(fault.path("code").asText()).isEqualTo(code);
    assertThat(given().get(path()).statusCode()).isEqualTo(404);
  }

  @ParameterizedTest
  @ValueSource(strings = {"Ostrel", "a--b", "a.b", "%2e%2e", "a%00b", "a%2fb", "-a", "%C3%A4"})
  void aNameThatNoPackCouldBeginWithIsRefused(String name) {
    Response refused =
        given()
            .urlEncodingEnabled(false)
            .auth()
            .oauth2(Tokens.admin())
            .contentType("application/json")
            .body(KitExamples.TERMS)
            .put("/v1/houses/" + name);
    assertThat(refused.statusCode()).as(refused.asString()).isIn(400, 404, 405);
    assertThat(refused.contentType()).isEqualTo("application/problem+json");
  }

  /** Each waits for the ten seconds that every change waits for a lock, both at once. */
  @Test
  void whatIsLockedForTooLongCanBeChangedLater() throws SQLException {
    String tag = put(KitExamples.TERMS).header("ETag");
    Kit other = Kit.house();
    String serial = other.units("core/dyn-card-1", 1).get(0);
    List<Supplier<Response>> changes =
        List.of(
            () -> changing(tag).body(with("turn_round_min", "60")).put(path()),
            () ->
                given()
                    .auth()
                    .oauth2(Tokens.admin())
                    .contentType("application/json")
                    .header("If-Match", "*")
                    .body("{\"microphone\": \"core/dyn-card-1\", \"day_rate_minor\": 900}")
                    .put("/v1/houses/" + other.id() + "/units/" + serial));
    try (Connection elsewhere = dataSource.getConnection()) {
      elsewhere.setAutoCommit(false);
      Sql.list(elsewhere, "select from house where id = ? for update", row -> true, house);
      Sql.list(elsewhere, "select from unit where house = ? for update", row -> true, other.id());
      List<CompletableFuture<Response>> sent =
          changes.stream().map(CompletableFuture::supplyAsync).toList();
      List<Response> answers = sent.stream().map(CompletableFuture::join).toList();
      elsewhere.rollback();
      elsewhere.setAutoCommit(true);
      assertThat(answers)
          .allSatisfy(
              refused -> {
                assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(503);
                assertThat(refused.jsonPath().getString("code")).isEqualTo("UNAVAILABLE");
                assertThat(refused.header("Retry-After")).isNotNull();
              });
    }
    assertThat(changes).allSatisfy(change -> assertThat(change.get().statusCode()).isEqualTo(200));
  }

  private String path() {
    return "/v1/houses/" + house;
  }

  private List<String> listed() {
    List<String> ids = new ArrayList<>();
    String next = "/v1/houses?page_size=50";
    while (next != null) {
      Response page = given().urlEncodingEnabled(false).get(next);
      ids.addAll(page.jsonPath().getList("items.id"));
      String token = page.jsonPath().getString("next_page_token");
      next = token == null ? null : "/v1/houses?page_size=50&page_token=" + token;
    }
    return ids;
  }

  private Response put(String terms) {
    return publishing().body(terms).put(path());
  }

  private RequestSpecification changing(String tag) {
    return publishing().header("If-Match", tag);
  }

  private RequestSpecification publishing() {
    return given().auth().oauth2(Tokens.publisher(house)).contentType("application/json");
  }

  /** The tag of the answer as it is without compression, which is what a change names too. */
  private static String plain(Response response) {
    return response.header("ETag").replace("-gzip", "");
  }

  /** As text, because half a surrogate pair would not outlive a tree. */
  private static String with(String member, String value) {
    ObjectNode terms = (ObjectNode) Ask.tree(KitExamples.TERMS);
    terms.put(member, "@@");
    return terms.toString().replace("\"@@\"", value);
  }
}
