package org.standoff.story;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import org.standoff.fixture.Ask;
import org.standoff.fixture.PackagedService;

/** Wishes for a few units of one house, and what was answered to them. */
final class HoldTraffic {

  static final String HOUSE = "quillmoor-store";
  static final String MICROPHONE = "boathouse/ldc-multi-1";
  private static final int UNITS = 12;
  private static final Instant FIRST_DAY = Instant.parse("2031-03-01T10:00:00Z");

  /** By key: what was answered. */
  private final Map<String, String> acknowledged = new ConcurrentHashMap<>();

  /** By key: what was asked and not answered. */
  private final Map<String, String> unanswered = new ConcurrentHashMap<>();

  private final AtomicInteger keys = new AtomicInteger();
  private final AtomicInteger putOff = new AtomicInteger();

  Map<String, String> acknowledged() {
    return acknowledged;
  }

  Map<String, String> unanswered() {
    return unanswered;
  }

  /** How often the answer was to come again later. */
  int putOff() {
    return putOff.get();
  }

  /** A house with its units, told over HTTP. */
  static void tellHouse(PackagedService service) throws IOException {
    String admin = service.token("admin", Optional.empty(), "warden");
    HttpResponse<String> house =
        service.put(
            "/v1/houses/" + HOUSE,
            admin,
            "{\"title\": \"Quillmoor\", \"zone\": \"Europe/Vienna\", \"currency\": \"EUR\"}");
    assertThat(house.statusCode()).as(house.body()).isEqualTo(201);
    StringBuilder units = new StringBuilder();
    for (int i = 0; i < UNITS; i++) {
      units.append(i == 0 ? "" : ",").append(unit(i));
    }
    HttpResponse<String> told = service.publish(HOUSE, admin, "{\"units\": [" + units + "]}");
    assertThat(told.statusCode()).as(told.body()).isEqualTo(200);
  }

  private static String unit(int number) {
    return "{\"serial\": \"Q-%d\", \"microphone\": \"%s\", \"day_rate_minor\": 1000}"
        .formatted(number, MICROPHONE);
  }

  /** A key that was never used, with its wish. */
  Map.Entry<String, String> wish(Random random) {
    String key = "key-" + keys.incrementAndGet();
    Instant from = FIRST_DAY.plus(Duration.ofHours(random.nextInt(24 * 60)));
    return Map.entry(
        key,
        """
        {"reference": "%s", "from": "%s", "to": "%s",
         "lines": [{"house": "%s", "microphone": "%s", "quantity": %d}]}
        """
            .formatted(
                key,
                from,
                from.plus(Duration.ofHours(1 + random.nextInt(30))),
                HOUSE,
                MICROPHONE,
                1 + random.nextInt(3)));
  }

  /** Asks for a hold and notes what was answered, if anything was. */
  void ask(PackagedService service, String token, Map.Entry<String, String> wish) {
    unanswered.put(wish.getKey(), wish.getValue());
    try {
      note(wish, service.hold(token, wish.getKey(), wish.getValue()));
    } catch (IOException gone) {
      // it stays among the unanswered
    }
  }

  private void note(Map.Entry<String, String> wish, HttpResponse<String> answer) {
    switch (answer.statusCode()) {
      case 201 -> {
        acknowledged.put(wish.getKey(), answer.body());
        unanswered.remove(wish.getKey());
      }
      case 409 -> {
        boolean sameKeyRuns = answer.headers().firstValue("Retry-After").isPresent();
        if (!sameKeyRuns) {
          unanswered.remove(wish.getKey());
        }
      }
      case 503 -> {
        assertThat(answer.headers().firstValue("Retry-After")).isPresent();
        putOff.incrementAndGet();
      }
      default -> throw new AssertionError(answer.statusCode() + " " + answer.body());
    }
  }

  /** Everything acknowledged is there with its units, and its key has the same answer. */
  void compare(PackagedService service, String token, Map<String, String> wishes)
      throws IOException {
    for (Map.Entry<String, String> one : acknowledged.entrySet()) {
      JsonNode told = Ask.tree(one.getValue());
      HttpResponse<String> read = service.get("/v1/holds/" + told.path("id").asText(), token);
      assertThat(read.statusCode()).as(one.getKey()).isEqualTo(200);
      assertThat(Ask.tree(read.body()).path("lines")).isEqualTo(told.path("lines"));
      HttpResponse<String> again = service.hold(token, one.getKey(), wishes.get(one.getKey()));
      assertThat(again.statusCode()).as(again.body()).isEqualTo(201);
      assertThat(again.body()).isEqualTo(one.getValue());
    }
  }

  /** Asks for the rest again, until every key has an answer. */
  void askAgain(PackagedService service, String token) {
    Map.copyOf(unanswered).entrySet().forEach(wish -> ask(service, token, wish));
  }

  /** By the tables alone: each acknowledged hold is there, made by its key, with its answer. */
  void compareAcknowledged(int databasePort) throws SQLException {
    try (Connection connection = connect(databasePort);
        PreparedStatement find =
            connection.prepareStatement(
                """
                select h.id, k.answer from idempotency_key k join hold h on h.id = k.hold
                where k.key = ? and h.reference = k.key
                """)) {
      for (Map.Entry<String, String> one : acknowledged.entrySet()) {
        find.setString(1, one.getKey());
        try (ResultSet rows = find.executeQuery()) {
          assertThat(rows.next()).as("%s was acknowledged and is gone", one.getKey()).isTrue();
          assertThat(rows.getString("id")).isEqualTo(Ask.tree(one.getValue()).path("id").asText());
          assertThat(rows.getString("answer")).isEqualTo(one.getValue());
          assertThat(rows.next()).as("%s was used twice", one.getKey()).isFalse();
        }
      }
    }
  }

  /** By the tables alone: no unit twice, no key twice, no hold without a key. */
  static void compareTables(int databasePort) throws SQLException {
    try (Connection connection = connect(databasePort)) {
      assertThat(
              count(
                  connection,
                  """
                  select count(*) from hold_unit a join hold_unit b
                      on b.unit = a.unit and b.hold > a.hold
                  where a.occupies and b.occupies
                    and lower(a.busy) < upper(b.busy) and lower(b.busy) < upper(a.busy)
                  """))
          .as("units promised twice")
          .isZero();
      assertThat(
              count(
                  connection,
                  """
                  select count(*) from hold h
                  where (select count(*) from idempotency_key k where k.hold = h.id) <> 1
                  """))
          .as("holds that no key made, or two")
          .isZero();
    }
  }

  private static Connection connect(int databasePort) throws SQLException {
    return DriverManager.getConnection(
        "jdbc:postgresql://127.0.0.1:" + databasePort + "/postgres", "postgres", "postgres");
  }

  private static long count(Connection connection, String question) throws SQLException {
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(question)) {
      rows.next();
      return rows.getLong(1);
    }
  }
}
