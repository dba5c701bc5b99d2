package org.standoff.story;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standoff.fixture.Ask;
import org.standoff.fixture.PackagedService;
import org.standoff.launch.EmbeddedDatabase;

/** Two packaged services on one PostgreSQL behave as one. */
class TwoInstancesIT {

  private static final int CLIENTS = 16;
  private static final int WISHES_OF_A_CLIENT = 25;

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

  private static String seen(String wish) {
    return wish.replace("\"reference\": \"", "\"reference\": \"seen-");
  }

  @Test
  void clientsThatDieBeforeTheirAnswerFindOneHoldOnTheOtherInstance() throws Exception {
    HoldTraffic traffic = new HoldTraffic();
    ExecutorService threads = Executors.newFixedThreadPool(CLIENTS);
    try {
      List<Future<?>> clients = new ArrayList<>();
      for (int client = 0; client < CLIENTS; client++) {
        Random random = new Random(client);
        clients.add(threads.submit(() -> client(traffic, random)));
      }
      for (Future<?> client : clients) {
        client.get(2, TimeUnit.MINUTES);
      }
    } finally {
      threads.shutdownNow();
    }
    traffic.askAgain(one, desk);
    assertThat(traffic.acknowledged().size()).isGreaterThan(30);
    HoldTraffic.compareTables(database.port());
  }

  private static Void client(HoldTraffic traffic, Random random) throws IOException {
    for (int i = 0; i < WISHES_OF_A_CLIENT; i++) {
      Map.Entry<String, String> wish = traffic.wish(random);
      PackagedService first = random.nextBoolean() ? one : other;
      if (random.nextInt(3) == 0) {
        sendAndDie(first, wish);
      }
      traffic.ask(first == one ? other : one, desk, wish);
    }
    return null;
  }

  /** Sends a wish and hangs up without a look at the answer. */
  private static void sendAndDie(PackagedService service, Map.Entry<String, String> wish)
      throws IOException {
    byte[] body = wish.getValue().getBytes(StandardCharsets.UTF_8);
    String head =
        """
        POST /v1/holds HTTP/1.1
        Host: 127.0.0.1
        Authorization: Bearer %s
        Content-Type: application/json
        Idempotency-Key: %s
        Content-Length: %d

        """
            .formatted(desk, wish.getKey(), body.length)
            .replace("\n", "\r\n");
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), service.port())) {
      OutputStream out = socket.getOutputStream();
      out.write(head.getBytes(StandardCharsets.US_ASCII));
      out.write(body);
      out.flush();
      socket.setSoLinger(true, 0);
    }
  }
}
