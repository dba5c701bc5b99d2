package org.standoff.contract;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;
import java.util.UUID;
import org.standoff.fixture.Ask;
import org.standoff.fixture.Kit;
import org.standoff.fixture.Tokens;

/**
 * A house with two units, a hold on one of them by a desk, and every operation on them as a request
 * that succeeds if the caller may.
 */
final class KitWorld {

  private static final String HELD = "boathouse/sdc-card-1";
  private static final String LEFT = "boathouse/dyn-card-1";
  private static final Instant FROM = Instant.now().truncatedTo(ChronoUnit.HOURS);
  private static final Instant TO = FROM.plus(2, ChronoUnit.DAYS);

  private static final String PACK =
      """
      { "files": { "pack.yaml": "format: 1\\nid: %s\\ntitle: Its own\\nversion: 1.0.0\\nlicence: Apache-2.0\\npublisher: A house\\n" } }
      """;

  private final String house;
  private final String desk = "desk-" + UUID.randomUUID();
  private final String heldSerial;
  private final String leftSerial;
  private final String hold;
  private final String placeInFeed;

  KitWorld() {
    Kit kit = Kit.house();
    this.heldSerial = kit.units(HELD, 1).get(0);
    this.leftSerial = kit.units(LEFT, 1).get(0);
    this.house = kit.id();
    this.placeInFeed = endOfFeed();
    Response made = hold(given().auth().oauth2(Tokens.booker(desk)), HELD);
    assertThat(made.statusCode()).as(made.asString()).isEqualTo(201);
    this.hold = made.path("id");
  }

  /** What names the hold in an answer. */
  String hold() {
    return hold;
  }

  /** Somebody, by the name of a column of the table. */
  RequestSpecification as(String caller) {
    return switch (caller) {
      case "nobody" -> given();
      case "publisher of the house" -> bearing(Tokens.publisher(house));
      case "publisher of another house" -> bearing(Tokens.publisher("another-" + house));
      case "booker of the desk" -> bearing(Tokens.booker(desk));
      case "booker of another desk" -> bearing(Tokens.booker("another-" + desk));
      case "admin" -> bearing(Tokens.admin());
      default -> throw new IllegalArgumentException("nobody is called " + caller);
    };
  }

  /** Brings the world to where the operation can succeed. */
  void prepare(String operation) {
    switch (operation) {
      case "getHousePack", "withdrawHousePack" -> succeed(send("putHousePack", as("admin")));
      case "checkOutHold" -> succeed(send("confirmHold", as("admin")));
      case "checkInHold" -> {
        succeed(send("confirmHold", as("admin")));
        succeed(send("checkOutHold", as("admin")));
      }
      default -> {
        // it can succeed as it is
      }
    }
  }

  /** Takes away what others would see of it. */
  void clear() {
    String pack = "/v1/houses/" + house + "/packs/" + house;
    if (given().get(pack).statusCode() == 200) {
      succeed(send("withdrawHousePack", as("admin")));
    }
  }

  Response send(String operation, RequestSpecification by) {
    String at = "/v1/houses/" + house;
    String unit = at + "/units/" + leftSerial;
    return switch (operation) {
      case "listHouses" -> by.get("/v1/houses");
      case "getHouse" -> by.get(at);
      case "putHouse" ->
          told(by, Map.of("title", "Renamed", "zone", "Europe/Vienna", "currency", "EUR")).put(at);
      case "listUnits" -> by.get(at + "/units");
      case "putUnits" ->
          told(by, Map.of("units", List.of(unit(heldSerial, HELD), unit("N1", LEFT))))
              .put(at + "/units");
      case "getUnit" -> by.get(unit);
      case "putUnit" -> told(by, unit(leftSerial, LEFT)).put(unit);
      case "retireUnit" -> by.header("If-Match", "*").delete(unit);
      case "getDiary" ->
          by.queryParam("from", FROM.toString())
              .queryParam("to", TO.toString())
              .get(at + "/units/" + heldSerial + "/diary");
      case "getHousePack" -> by.get(at + "/packs/" + house);
      case "putHousePack" ->
          by.contentType("application/json")
              .body(PACK.formatted(house))
              .put(at + "/packs/" + house);
      case "withdrawHousePack" -> by.header("If-Match", "*").delete(at + "/packs/" + house);
      case "getAvailability" ->
          by.queryParam("microphone", HELD)
              .queryParam("houses", house)
              .queryParam("from", FROM.toString())
              .queryParam("to", TO.toString())
              .get("/v1/availability");
      case "postAvailability" ->
          by.contentType("application/json")
              .body(
                  Map.of(
                      "microphone", HELD,
                      "houses", List.of(house),
                      "from", FROM.toString(),
                      "to", TO.toString()))
              .post("/v1/availability");
      case "listHolds" -> by.queryParam("house", house).get("/v1/holds");
      case "postHold" -> hold(by, LEFT);
      case "getHold" -> by.get("/v1/holds/" + hold);
      case "getHoldCharge" -> by.get("/v1/holds/" + hold + "/charge");
      case "confirmHold" -> step(by, "confirm");
      case "releaseHold" -> step(by, "release");
      case "extendHold" ->
          step(
              by.contentType("application/json")
                  .body(Map.of("to", TO.plus(1, ChronoUnit.DAYS).toString())),
              "extend");
      case "checkOutHold" -> step(by, "check-out");
      case "checkInHold" -> step(by.contentType("application/json").body("{}"), "check-in");
      case "getEvents" -> by.queryParam("after", placeInFeed).get("/v1/events");
      default -> throw new IllegalArgumentException("say how " + operation + " is asked");
    };
  }

  private static RequestSpecification bearing(String token) {
    return given().auth().oauth2(token);
  }

  private static RequestSpecification told(RequestSpecification by, Object body) {
    return by.contentType("application/json").header("If-Match", "*").body(body);
  }

  private static Map<String, Object> unit(String serial, String microphone) {
    return Map.of("serial", serial, "microphone", microphone, "day_rate_minor", 1100);
  }

  private Response hold(RequestSpecification by, String microphone) {
    return by.contentType("application/json")
        .header("Idempotency-Key", UUID.randomUUID().toString())
        .body(
            Map.of(
                "reference", UUID.randomUUID().toString(),
                "from", FROM.toString(),
                "to", TO.toString(),
                "lines", List.of(Map.of("house", house, "microphone", microphone))))
        .post("/v1/holds");
  }

  private Response step(RequestSpecification by, String step) {
    return by.header("If-Match", "*").post("/v1/holds/" + hold + "/" + step);
  }

  private static void succeed(Response response) {
    assertThat(response.statusCode()).as(response.asString()).isIn(200, 201);
  }

  /** Behind everything that other tests have left in the feed. */
  private static String endOfFeed() {
    String place = "0-0";
    boolean more = true;
    while (more) {
      Response stretch =
          given()
              .auth()
              .oauth2(Tokens.admin())
              .queryParam("after", place)
              .queryParam("limit", 500)
              .get("/v1/events");
      place = Ask.tree(stretch.asString()).path("next").asText();
      more = Ask.tree(stretch.asString()).path("more").asBoolean();
    }
    return place;
  }
}
