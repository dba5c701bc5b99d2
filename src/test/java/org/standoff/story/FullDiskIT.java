package org.standoff.story;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standoff.fixture.PackagedService;
import org.standoff.launch.StartNotice;

/**
 * The data folder lies on a disk of its own that fills up, so much that the embedded PostgreSQL has
 * to end: storing is put off, calculations go on, and with room again all is as it was, without a
 * restart. A disk of one's own takes the right to mount one; {@code DiskFullTest} does without.
 */
class FullDiskIT {

  private static final Duration LIMIT = Duration.ofMinutes(2);
  private static final int MOST_UNITS = 20_000;

  @TempDir Path folder;

  private Path disk;
  private PackagedService service;

  @BeforeEach
  void mount() throws Exception {
    disk = Files.createDirectory(folder.resolve("disk"));
    assumeTrue(
        run("mount", "-t", "tmpfs", "-o", "size=384m,mode=0700", "standoff", disk.toString()),
        "who runs this may not mount a disk");
    service = PackagedService.start(disk, Map.of());
  }

  @AfterEach
  void unmount() throws Exception {
    if (service != null) {
      service.close();
    }
    run("umount", "-l", disk.toString());
  }

  @Test
  void storingIsPutOffCalculationsGoOnAndWithRoomAllIsWellWithoutARestart() throws Exception {
    String admin = service.token("admin", Optional.empty(), "warden");
    HoldTraffic.tellHouse(service);
    Path ballast = disk.resolve("ballast");
    fill(ballast);

    int stored = 0;
    while (stored < MOST_UNITS && put(stored, admin) == 201) {
      stored++;
    }
    assertThat(stored).as("the disk is full at last").isLessThan(MOST_UNITS);
    assertCalculates(admin);

    endTheServerForWantOfRoom(service.databasePort());
    assertThat(put(stored, admin)).isEqualTo(503);
    await().atMost(LIMIT).until(() -> database(admin).equals("down"));
    assertThat(service.get("/v1/holds", admin).statusCode()).isEqualTo(503);
    assertCalculates(admin);

    Files.delete(ballast);
    // another unit each time: one whose answer was lost may have been stored
    AtomicInteger next = new AtomicInteger(stored);
    await().atMost(LIMIT).until(() -> put(next.incrementAndGet(), admin) == 201);
    assertThat(database(admin)).isEqualTo("up");
    for (int number = 0; number < stored; number++) {
      assertThat(service.get(unit(number), admin).statusCode()).isEqualTo(200);
    }
  }

  /** 201 or 503 with a time to come again; nothing else. */
  private int put(int number, String token) throws IOException {
    HttpResponse<String> answer =
        service.put(
            unit(number),
            token,
            "{\"microphone\": \"%s\", \"day_rate_minor\": 900}".formatted(HoldTraffic.MICROPHONE));
    assertThat(answer.statusCode()).as(answer.body()).isIn(201, 503);
    assertThat(answer.headers().firstValue("Retry-After").isPresent())
        .isEqualTo(answer.statusCode() == 503);
    return answer.statusCode();
  }

  private static String unit(int number) {
    return "/v1/houses/" + HoldTraffic.HOUSE + "/units/F-" + number;
  }

  private void assertCalculates(String token) throws IOException {
    assertThat(service.get(StartNotice.TRY_PATH, token).statusCode()).isEqualTo(200);
  }

  private String database(String token) throws IOException {
    String health = service.get("/q/health/ready", token).body().replace(" ", "");
    return health.contains("\"server\":\"up\"") ? "up" : "down";
  }

  /** Leaves not one block. */
  private static void fill(Path file) throws IOException {
    byte[] block = new byte[4096];
    try (OutputStream out = Files.newOutputStream(file)) {
      while (true) {
        out.write(block);
      }
    } catch (IOException full) {
      assertThat(full).hasMessageContaining("No space left");
    }
  }

  /** A new segment of its log can't be made, and without one PostgreSQL ends all sessions. */
  private static void endTheServerForWantOfRoom(int port) {
    String url = "jdbc:postgresql://127.0.0.1:" + port + "/postgres";
    for (int segment = 0; segment < 64; segment++) {
      try (Connection connection = DriverManager.getConnection(url, "postgres", "postgres");
          Statement statement = connection.createStatement()) {
        statement.execute("select pg_switch_wal(), pg_logical_emit_message(false, 'fill', 'up')");
      } catch (SQLException ended) {
        return;
      }
    }
    throw new AssertionError("the server found room for 64 segments of its log");
  }

  private static boolean run(String... command) throws IOException, InterruptedException {
    return new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start()
            .waitFor()
        == 0;
  }
}
