package org.standoff.rest.kit;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.fixture.Ask;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Kit;
import org.standoff.fixture.Tokens;

/** A house's own pack: checked as files are, in use at once, taken back. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class PacksOverHttpTest {
  private static final ObjectMapper JSON = new ObjectMapper();

  private final String house = Kit.house().id();
  private final String pack = house + "-own";
  private final String address = "/v1/houses/" + house + "/packs/" + pack;

  @Test
  void aPackIsInUseWhenTheAnswerComes() throws IOException {
    Response made = put(null, files());
    assertThat(made.statusCode()).as(made.asString()).isEqualTo(201);
    String microphone = "/v1/microphones/" + pack + "/own-1";
    assertThat(given().get(microphone).statusCode()).isEqualTo(200);
    assertThat(given().get("/v1/packs/" + pack).jsonPath().getString("status")).isEqualTo("ok");
    assertThat(given().get(address).jsonPath().getMap("files")).isEqualTo(files());
    assertThat(unit("own-1").statusCode()).isEqualTo(201);
  }

  @Test
  void theSameFilesAgainChangeNothing() throws IOException {
    Response made = put(null, files());
    assertThat(put(null, files()).statusCode()).isEqualTo(428);
    Response again = put("*", files());
    assertThat(again.statusCode()).isEqualTo(200);
    assertThat(again.jsonPath().getInt("revision")).isEqualTo(made.jsonPath().getInt("revision"));
    assertThat(put("\"x\"", files()).statusCode()).isEqualTo(412);
  }

  @Test
  void aPackIsTakenBackAsItWasRead() throws IOException {
    put(null, files());
    Response read = given().get(address);
    Response same = publishing(read.header("ETag")).body(read.asString()).put(address);
    assertThat(same.statusCode()).as(same.asString()).isEqualTo(200);
    assertThat(same.asString()).isEqualTo(read.asString());
  }

  @Test
  void aPackThatSaysItIsAnotherIsRefused() throws IOException {
    ObjectNode told = JSON.createObjectNode().put("house", "another").put("id", house);
    told.set("files", JSON.valueToTree(files()));
    Response refused = publishing(null).body(told.toString()).put(address);
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(400);
    JsonNode faults = Ask.tree(refused.asString()).path("errors");
    assertThat(faults.findValuesAsText("pointer")).containsExactlyInAnyOrder("/house", "/id");
    assertThat(faults.findValuesAsText("code")).containsOnly("CONTRADICTION");
    assertThat(given().get(address).statusCode()).isEqualTo(404);
  }

  @Test
  void faultsAreToldWithFileLineAndPointerAndNothingChanges() throws IOException {
    put(null, files());
    Map<String, String> faulty = files();
    faulty.compute(
        "microphones/own-1.yaml", (path, text) -> text.replace("transducer: ", "transducer: no-"));
    Response refused = put("*", faulty);
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(422);
    JsonNode fault = Ask.tree(refused.asString()).path("errors").path(0);
    assertThat(fault.path("file").asText()).isEqualTo(pack + "/microphones/own-1.yaml");
    assertThat(fault.path("pointer").asText()).isEqualTo("/transducer");
    int line =
        1
            + faulty.get("microphones/own-1.yaml").lines().toList().stream()
                .map(text -> text.startsWith("transducer:"))
                .toList()
                .indexOf(true);
    assertThat(fault.path("line").asInt()).isEqualTo(line);
    assertThat(given().get(address).jsonPath().getMap("files")).isEqualTo(files());
    assertThat(given().get("/v1/packs/" + pack).jsonPath().getString("status")).isEqualTo("ok");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../pack.yaml",
        "/etc/passwd",
        "microphones/../../x.yaml",
        "microphones/.yaml",
        "microphones/x.yml",
        "microphones/X.yaml",
        "microphones\\x.yaml",
        "microphones/a/b.yaml",
        "microfones/x.yaml",
        "pack.yaml/",
        "",
        "microphones/x.yaml\u0000",
        "microphones/\ud800.yaml"
      })
  void aPathThatNoPackHasIsRefused(String path) throws IOException {
    Map<String, String> files = files();
    files.put(path, "format: 1");
    Response refused = put(null, files);
    assertThat(refused.statusCode()).as(refused.asString()).isIn(400, 422);
    assertThat(given().get(address).statusCode()).isEqualTo(404);
    assertThat(given().get("/v1/packs/" + pack).statusCode()).isEqualTo(404);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "a: &a [1]\nb: *a",
        "a: 1\na: 2",
        "title: !!java.lang.String x",
        "--- 1\n--- 2",
        "a: .nan",
        "\u0000",
        "\ud800",
        ""
      })
  void aHostileFileIsRefused(String text) throws IOException {
    Map<String, String> files = files();
    files.put("microphones/own-2.yaml", text);
    Response refused = put(null, files);
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(422);
    assertThat(refused.asString()).contains("own-2.yaml").doesNotContain("Exception");
  }

  @Test
  void aNameThatIsNotTheHousesOwnIsRefused() throws IOException {
    for (String name : List.of("core", "boathouse", house + "x", "x-" + house, "..", house + "-")) {
      Response refused =
          publishing(null)
              .urlEncodingEnabled(false)
              .body(JSON.writeValueAsString(Map.of("files", files())))
              .put("/v1/houses/" + house + "/packs/" + name);
      assertThat(refused.statusCode()).as(name + refused.asString()).isIn(400, 404, 405);
    }
    Response foreign =
        given()
            .auth()
            .oauth2(Tokens.publisher("other"))
            .contentType("application/json")
            .body(JSON.writeValueAsString(Map.of("files", files())))
            .put(address);
    assertThat(foreign.statusCode()).isEqualTo(403);
    assertThat(given().delete(address).statusCode()).isEqualTo(401);
  }

  @Test
  void anotherHouseWhosePacksWouldBeginAlikeTakesNoName() throws IOException {
    put(null, files());
    String shorter = shorterHouse();
    Response refused = publishAs(shorter, "*", pack);
    assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(409);
  }

  @Test
  void aNameThatBeginsWithTwoHousesIsForTheLongerOneAlsoBeforeItIsUsed() throws IOException {
    String shorter = shorterHouse();
    for (String name : List.of(pack, house)) {
      Response refused = publishAs(shorter, null, name);
      assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(409);
      assertThat(refused.asString()).contains("In the way is house " + house);
    }
    assertThat(put(null, files()).statusCode()).isEqualTo(201);
  }

  @Test
  void aPackThatWasThereBeforeTheHouseOfItsNameStaysWithWhoPublishedIt() throws IOException {
    assertThat(put(null, files()).statusCode()).isEqualTo(201);
    Kit.sql("insert into house (id, title, zone) values (?, 'Longer', 'Europe/Vienna')", pack);
    Map<String, String> more = files();
    more.put("microphones/own-2.yaml", more.get("microphones/own-1.yaml"));
    assertThat(put("*", more).statusCode()).isEqualTo(200);
  }

  @Test
  void noItemIsLostBetweenPagesWhereTheNameOfAPackBeginsWithAnothers() throws IOException {
    put(null, files());
    assertThat(publishAs(house, null, house).statusCode()).isEqualTo(201);
    List<String> listed = new ArrayList<>();
    String token = null;
    do {
      RequestSpecification asking = given().queryParam("q", house).queryParam("page_size", 1);
      Response page =
          (token == null ? asking : asking.queryParam("page_token", token)).get("/v1/microphones");
      listed.addAll(page.jsonPath().getList("items.id", String.class));
      token = page.jsonPath().getString("next_page_token");
    } while (token != null);
    assertThat(listed).containsExactlyInAnyOrder(pack + "/own-1", house + "/own-1");
  }

  @Test
  void aNameThatWasTakenBackIsFreeForTheHouseThatItIsNearerTo() throws IOException {
    String longer = house + "-x";
    String name = longer + "-own";
    assertThat(publishAs(house, null, name).statusCode()).isEqualTo(201);
    assertThat(
            given()
                .auth()
                .oauth2(Tokens.publisher(house))
                .header("If-Match", "*")
                .delete("/v1/houses/" + house + "/packs/" + name)
                .statusCode())
        .isLessThan(300);
    Kit.sql("insert into house (id, title, zone) values (?, 'Longer', 'Europe/Vienna')", longer);

    Response taken = publishAs(longer, null, name);

    assertThat(taken.statusCode()).as(taken.asString()).isEqualTo(201);
    assertThat(publishAs(house, null, name).statusCode()).isEqualTo(409);
  }

  private String shorterHouse() {
    String shorter = house.substring(0, house.lastIndexOf('-'));
    Kit.sql("insert into house (id, title, zone) values (?, 'Shorter', 'Europe/Vienna')", shorter);
    return shorter;
  }

  private Response publishAs(String other, String tag, String name) throws IOException {
    Map<String, String> files = files();
    files.compute("pack.yaml", (path, text) -> text.replace("id: " + pack, "id: " + name));
    RequestSpecification publishing =
        given().auth().oauth2(Tokens.publisher(other)).contentType("application/json");
    return (tag == null ? publishing : publishing.header("If-Match", tag))
        .body(JSON.writeValueAsString(Map.of("files", files)))
        .put("/v1/houses/" + other + "/packs/" + name);
  }

  @Test
  void whatUnitsAreCannotBeLeftOutOrTakenBack() throws IOException {
    put(null, files());
    unit("own-1");
    Map<String, String> without = files();
    without.remove("microphones/own-1.yaml");
    for (Response refused : List.of(put("*", without), publishing("*").delete(address))) {
      assertThat(refused.statusCode()).as(refused.asString()).isEqualTo(409);
      assertThat(refused.asString()).contains("U1", pack + "/own-1");
    }
    publishing("*").delete("/v1/houses/" + house + "/units/U1").then().statusCode(200);
    assertThat(publishing("*").delete(address).statusCode()).isEqualTo(200);
    assertThat(given().get(address).statusCode()).isEqualTo(404);
    assertThat(given().get("/v1/packs/" + pack).statusCode()).isEqualTo(404);
    assertThat(given().get("/v1/microphones/" + pack + "/own-1").statusCode()).isEqualTo(404);
    assertThat(publishing("*").delete(address).statusCode()).isEqualTo(404);
    // it can come back, as something new
    assertThat(put(null, files()).statusCode()).isEqualTo(201);
    assertThat(given().get("/v1/microphones/" + pack + "/own-1").statusCode()).isEqualTo(200);
  }

  private Map<String, String> files() throws IOException {
    Map<String, String> files = new TreeMap<>();
    files.put(
        "pack.yaml",
        """
        format: 1
        id: %s
        title: What the house measured itself
        version: 1.0.0
        licence: Apache-2.0
        publisher: Test house
        """
            .formatted(pack));
    files.put(
        "microphones/own-1.yaml",
        Files.readString(Path.of("catalogue", "core", "microphones", "dyn-card-1.yaml")));
    return files;
  }

  private Response unit(String item) {
    return publishing(null)
        .body(Map.of("microphone", pack + "/" + item, "day_rate_minor", 100))
        .put("/v1/houses/" + house + "/units/U1");
  }

  private Response put(String tag, Map<String, String> files) throws IOException {
    ObjectNode body = JSON.createObjectNode();
    body.set("files", JSON.valueToTree(files));
    return publishing(tag).body(body.toString()).put(address);
  }

  private RequestSpecification publishing(String tag) {
    RequestSpecification request =
        given().auth().oauth2(Tokens.publisher(house)).contentType("application/json");
    return tag == null ? request : request.header("If-Match", tag);
  }
}
