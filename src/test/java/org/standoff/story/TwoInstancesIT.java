package org.standoff.story;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.MethodOrderer;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestMethodOrder;
import org.junit.jupiter.api.io.TempDir;
import org.standoff.fixture.Ask;
import org.standoff.fixture.PackagedService;
import org.standoff.launch.EmbeddedDatabase;

/** Two packaged services on one PostgreSQL behave as one. */
@TestMethodOrder(MethodOrderer.OrderAnnotation.class)
class TwoInstancesIT {

  private static final int CLIENTS = 64;
  private static final int WISHES_OF_A_CLIENT = 8;
  private static final Duration LIMIT = Duration.ofMinutes(3);

  @TempDir static Path folder;

  private static EmbeddedDatabase database;
  private static PackagedService one;
  private static PackagedService other;
  private static String desk;

  @BeforeAll
  static void startBoth() throws IOException {
    database = EmbeddedDatabase.forgetful(0);
    Map<String, String> settings = new HashMap<>();
    EmbeddedDatabase.settings(database.port())
        .forEach(
            (name, value) -> settings.put(name.toUpperCase(Locale.ROOT).replace('.', '_'), value));
    settings.put("STANDOFF_LIMITS_REQUESTS_AT_ONCE", String.valueOf(CLIENTS));
    one = PackagedService.start(folder, settings);
    other = PackagedService.start(folder, settings);
    HoldTraffic.tellHouse(one);
    desk = one.token("booker", Optional.empty(), "north-desk");
  }

  @AfterAll
  static void stopBoth() throws IOException {
    one.close();
    other.close();
    database.close();
  }

  @Test
  @Order(1)
  void aHoldThatOneMakesTheOtherShowsAtOnce() throws IOException {
    HoldTraffic traffic = new HoldTraffic();
    Random random = new Random(1);
    for (int i = 0; i < 20; i++) {
      Map.Entry<String, String> wish = traffic.wish(random);
      HttpResponse<String> made = one.hold(desk, "seen-" + wish.getKey(), seen(wish.getValue()));
      assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
      String id = Ask.tree(made.body()).path("id").asText();
      HttpResponse<String> read = other.get("/v1/holds/" + id, desk);
      assertThat(read.body()).isEqualTo(made.body());
      assertThat(other.step(desk, id, "confirm").statusCode()).isEqualTo(200);
      assertThat(Ask.tree(one.get("/v1/holds/" + id, desk).body()).path("state").asText())
          .isEqualTo("confirmed");
      assertThat(one.step(desk, id, "release").statusCode()).isEqualTo(200);
    }
  }

  @Test
  @Order(1)
  void aPackThatOneTookGoesLiveOnTheOtherByItself() throws IOException {
    String pack = HoldTraffic.HOUSE + "-own";
    Map<String, Object> files =
        Map.of(
            "pack.yaml",
            """
            format: 1
            id: %s
            title: What the house measured itself
            version: 1.0.0
            licence: Apache-2.0
            publisher: Quillmoor
            """
                .formatted(pack),
            "microphones/own-1.yaml",
            Files.readString(Path.of("catalogue", "core", "microphones", "dyn-card-1.yaml")));
    HttpResponse<String> taken =
        one.put(
            "/v1/houses/" + HoldTraffic.HOUSE + "/packs/" + pack,
            one.token("admin", Optional.empty(), "warden"),
            new ObjectMapper().writeValueAsString(Map.of("files", files)));
    assertThat(taken.statusCode()).as(taken.body()).isEqualTo(201);
    String microphone = "/v1/microphones/" + pack + "/own-1";
    await().atMost(LIMIT).until(() -> other.get(microphone, desk).statusCode() == 200);
    assertThat(other.get(microphone, desk).body()).isEqualTo(one.get(microphone, desk).body());
  }

  private static String seen(String wish) {
    return wish.replace("\"reference\": \"", "\"reference\": \"seen-");
  }

  /**
   * Clients hang up and retry, sessions are ended, statements run out of time. It leaves a mess.
   */
  @Test
  @Order(2)
  void whateverHappensMeanwhileNothingIsPromisedTwiceAndEveryKeyHasOneHold() throws Exception {
    HoldTraffic traffic = new HoldTraffic();
    HoldStorm storm = new HoldStorm(one, other, desk, database.port(), traffic);
    storm.rage(CLIENTS, WISHES_OF_A_CLIENT, LIMIT);
    assertThat(storm.sessionsEnded()).as("sessions ended").isPositive();
    assertThat(traffic.putOff()).as("told to come again").isPositive();
    await()
        .atMost(LIMIT)
        .until(
            () -> {
              traffic.askAgain(one, desk);
              return traffic.unanswered().isEmpty();
            });
    assertThat(traffic.acknowledged().size()).isGreaterThan(CLIENTS);
    HoldTraffic.compareTables(database.port());
    traffic.compareAcknowledged(database.port());
  }
}
