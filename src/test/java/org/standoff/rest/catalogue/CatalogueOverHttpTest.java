package org.standoff.rest.catalogue;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.lessThanOrEqualTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.catalogue.CurrentCatalogue;
import org.standoff.chain.Microphone;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.rest.http.EntityTags;

@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class CatalogueOverHttpTest {

  @Inject CurrentCatalogue current;

  @Test
  void aPackTellsHowItStandsAndWhatItHolds() {
    given()
        .get("/v1/packs/core")
        .then()
        .statusCode(200)
        .header("ETag", notNullValue())
        .body("id", equalTo("core"))
        .body("status", equalTo("ok"))
        .body("in_use", equalTo(true))
        .body("revision", notNullValue())
        .body("last_good_load", startsWith("20"))
        .body(
            "counts.microphones",
            equalTo(
                (int)
                    current.get().items(Microphone.class).stream()
                        .filter(item -> item.id().pack().equals("core"))
                        .count()))
        .body("findings.findAll { it.severity == 'fault' }", empty());
  }

  /** The time of loading included, which differs from instance to instance. */
  @Test
  void theTagOfAPackNamesTheVeryBytesThatAreSent() {
    Response pack = given().header("Accept-Encoding", "gzip").get("/v1/packs/core");
    String tag = EntityTags.of(pack.asByteArray(), pack.contentType());
    assertThat(pack.header("ETag")).isEqualTo(tag.substring(0, tag.length() - 1) + "-gzip\"");
  }

  @Test
  void packsAreListedByName() {
    given().get("/v1/packs").then().statusCode(200).body("items.id", hasItems("boathouse", "core"));
  }

  @Test
  void anItemIsItsFileWithItsNameRevisionAndTag() {
    given()
        .get("/v1/styles/core/house-default")
        .then()
        .statusCode(200)
        .header("Cache-Control", "public, max-age=2, stale-while-revalidate=2")
        .header("Link", "</schemas/style.json>; rel=\"describedby\"")
        .body("kind", nullValue())
        .body("id", equalTo("core/house-default"))
        .body("revision", notNullValue())
        .body("etag", startsWith("\""))
        .body("format", equalTo(1))
        .body("guarded_percentile", equalTo(95))
        .body("isolation_weight.room", equalTo(-1));
  }

  @Test
  void theTagInAListIsTheTagOfTheItemSoAScriptNeedsNoSecondLook() {
    String id = "core/house-default";
    String listed =
        given()
            .get("/v1/styles")
            .then()
            .extract()
            .path("items.find { it.id == '" + id + "' }.etag");
    given().header("If-None-Match", listed).get("/v1/styles/" + id).then().statusCode(304);
    given()
        .header("If-None-Match", listed)
        .header("Accept-Encoding", "gzip")
        .get("/v1/styles/" + id)
        .then()
        .statusCode(304);
    given().header("If-None-Match", "\"other\"").get("/v1/styles/" + id).then().statusCode(200);
  }

  @Test
  void aListIsReadPageByPageWithoutLossOrDoubling() {
    List<String> seen = new ArrayList<>();
    String token = null;
    do {
      var request = given().queryParam("page_size", 7);
      if (token != null) {
        request.queryParam("page_token", token);
      }
      var page = request.get("/v1/microphones").then().statusCode(200).extract();
      seen.addAll(page.path("items.id"));
      token = page.path("next_page_token");
    } while (token != null);
    assertThat(seen)
        .isEqualTo(
            current.get().items(Microphone.class).stream().map(i -> i.id().toString()).toList());
  }

  @Test
  void microphonesAreNarrowedByWhatTheyAre() {
    given()
        .queryParam("pattern", "figure-8")
        .queryParam("transducer", "passive-ribbon")
        .get("/v1/microphones")
        .then()
        .statusCode(200)
        .body("items", not(empty()))
        .body("items.transducer", everyItem(equalTo("passive-ribbon")))
        .body("items.patterns", everyItem(hasItem("figure-8")));
    given()
        .queryParam("max_self_noise_dba", 12)
        .get("/v1/microphones")
        .then()
        .body("items", not(empty()))
        .body("items.self_noise_dba.collect { it as double }", everyItem(lessThanOrEqualTo(12.0)));
    given()
        .queryParam("min_maximum_spl_db", 200)
        .get("/v1/microphones")
        .then()
        .statusCode(200)
        .body("items", empty());
    given()
        .queryParam("pack", "boathouse")
        .queryParam("pad_position", "before-electronics")
        .queryParam("address", "side")
        .get("/v1/microphones")
        .then()
        .statusCode(200)
        .body("items", not(empty()))
        .body("items.id", everyItem(startsWith("boathouse/")))
        .body("items.address", everyItem(equalTo("side")));
  }

  @Test
  void microphonesStandInTheOrderThatWasAskedForFromPageToPage() {
    List<Map<String, Object>> quietestFirst = inOrder("self-noise");
    List<Double> noises =
        quietestFirst.stream()
            .map(row -> (Number) row.get("self_noise_dba"))
            .map(CatalogueOverHttpTest::orBeyondAll)
            .toList();
    assertThat(noises).isSorted().contains(Double.MAX_VALUE);
    List<Map<String, Object>> highestFirst = inOrder("maximum-level");
    assertThat(
            highestFirst.stream()
                .map(row -> ((Number) row.get("maximum_level_db_spl")).doubleValue())
                .toList())
        .isSortedAccordingTo(Comparator.reverseOrder());
    List<Object> ids = inOrder("id").stream().map(row -> row.get("id")).toList();
    assertThat(ids).doesNotHaveDuplicates().hasSize(current.get().items(Microphone.class).size());
    for (List<Map<String, Object>> ordered : List.of(quietestFirst, highestFirst)) {
      assertThat(ordered.stream().map(row -> row.get("id")))
          .containsExactlyInAnyOrderElementsOf(ids)
          .isNotEqualTo(ids);
    }
  }

  private static Double orBeyondAll(Number noise) {
    return noise == null ? Double.MAX_VALUE : noise.doubleValue();
  }

  /** All of them, by pages of three. */
  private static List<Map<String, Object>> inOrder(String order) {
    List<Map<String, Object>> all = new ArrayList<>();
    String token = null;
    do {
      RequestSpecification asking =
          given().queryParam("order_by", order).queryParam("page_size", 3);
      Response page =
          (token == null ? asking : asking.queryParam("page_token", token)).get("/v1/microphones");
      assertThat(page.statusCode()).as(page.asString()).isEqualTo(200);
      all.addAll(page.jsonPath().getList("items"));
      token = page.jsonPath().getString("next_page_token");
    } while (token != null);
    return all;
  }

  @Test
  void sourcesAreNarrowedByPurposeAndWords() {
    given()
        .queryParam("purpose", "attack")
        .queryParam("q", "KICK")
        .get("/v1/sources")
        .then()
        .statusCode(200)
        .body("items.id", hasItem("core/kick"))
        .body("items.id", not(hasItem("core/snare")));
  }

  @Test
  void allFaultsOfAQueryAreToldAtOnce() {
    given()
        .queryParam("patern", "omni")
        .queryParam("transducer", "condensor")
        .queryParam("max_self_noise_dba", "quiet")
        .get("/v1/microphones")
        .then()
        .statusCode(400)
        .contentType("application/problem+json")
        .body("errors.parameter", hasItems("patern", "transducer", "max_self_noise_dba"))
        .body("errors.find { it.parameter == 'patern' }.suggestion", equalTo("pattern"))
        .body("errors.find { it.parameter == 'transducer' }.suggestion", equalTo("condenser"));
  }

  @Test
  void anUnknownItemIsA404WithTheNearestOne() {
    given()
        .get("/v1/sources/core/kik")
        .then()
        .statusCode(404)
        .contentType("application/problem+json")
        .body("errors[0].found", equalTo("core/kik"))
        .body("errors[0].suggestion", equalTo("core/kick"));
    given()
        .get("/v1/packs/cor")
        .then()
        .statusCode(404)
        .body("errors[0].suggestion", equalTo("core"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"CORE/kick", "core/a%0Ab", "core/%00"})
  void aNameThatIsNoIdIsNotFound(String id) {
    given().urlEncodingEnabled(false).get("/v1/sources/" + id).then().statusCode(404);
  }

  @ParameterizedTest
  @CsvSource({
    "microphones, microphone",
    "sources, source",
    "preamps, preamp",
    "direct-boxes, direct-box",
    "rooms, room",
    "ensembles, ensemble",
    "styles, style",
    "pairs, pair",
    "listening-models, listening-model"
  })
  void everyKindIsListedShownAndDescribed(String folder, String kind) {
    String first =
        given().get("/v1/" + folder).then().statusCode(200).extract().path("items[0].id");
    given().get("/v1/" + folder + "/" + first).then().statusCode(200).body("id", equalTo(first));
    given()
        .get("/schemas/" + kind + ".json")
        .then()
        .statusCode(200)
        .contentType("application/schema+json")
        .body("'$id'", equalTo("https://standoff.example/schemas/" + kind + ".json"));
    String table =
        given()
            .accept("text/csv")
            .get("/v1/" + folder)
            .then()
            .statusCode(200)
            .contentType("text/csv")
            .extract()
            .asString();
    assertThat(table.replace("\"", "")).startsWith("id,title,").contains("\r\n" + first + ",");
  }

  @Test
  void aTableHasNoPages() {
    given()
        .accept("text/csv")
        .queryParam("page_size", 3)
        .get("/v1/microphones")
        .then()
        .statusCode(400)
        .body("errors[0].parameter", equalTo("page_size"));
  }

  @Test
  void aSchemaOfNoKindIsNotFound() {
    given().get("/schemas/..%2fpack.json").then().statusCode(404);
    given().get("/schemas/stand.json").then().statusCode(404);
    given().get("/schemas/pack.json").then().statusCode(200);
  }

  @Test
  void healthAndMetricsTellHowTheCatalogueStands() {
    given()
        .get("/q/health/ready")
        .then()
        .statusCode(200)
        .body("checks.find { it.name == 'catalogue' }.status", equalTo("UP"))
        .body("checks.find { it.name == 'catalogue' }.data.faulty_packs", equalTo(0))
        .body(
            "checks.find { it.name == 'catalogue' }.data.revision",
            equalTo(current.get().revision()));
    given()
        .get("/q/metrics")
        .then()
        .body(containsString("catalogue_faulty_packs 0.0"))
        .body(containsString("catalogue_items{kind=\"microphone\"}"));
  }

  @Test
  void theTimeOfLoadingIsNotInAList() {
    given().get("/v1/packs").then().body("items.last_good_load", everyItem(nullValue()));
  }
}
