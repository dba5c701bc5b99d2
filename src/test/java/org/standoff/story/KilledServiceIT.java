package org.standoff.story;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standoff.fixture.PackagedService;
import org.standoff.launch.StartNotice;

/**
 * The service and its embedded PostgreSQL are killed in mid-traffic: what was acknowledged is there
 * when the same command starts them again. Where the PostgreSQL alone is killed, the service says
 * so and starts it again itself.
 */
class KilledServiceIT {

  private static final int CLIENTS = 8;
  private static final int ENOUGH = 60;
  private static final Duration LIMIT = Duration.ofMinutes(2);

  @TempDir Path folder;

  private final List<PackagedService> started = new ArrayList<>();
  private final HoldTraffic traffic = new HoldTraffic();
  private final Map<String, String> wishes = new ConcurrentHashMap<>();

  @Test
  void nothingAcknowledgedIsLost() throws Exception {
    PackagedService first = start();
    HoldTraffic.tellHouse(first);
    String desk = first.token("booker", Optional.empty(), "north-desk");
    during(first, desk, ENOUGH, () -> killBoth(first));

    PackagedService second = start();
    traffic.compare(second, desk, wishes);
    traffic.askAgain(second, desk);
    during(second, desk, 2 * ENOUGH, () -> killDatabase(second));
    assertThat(second.get(StartNotice.TRY_PATH, desk).statusCode())
        .as("calculations know nothing of it")
        .isEqualTo(200);
    await().atMost(LIMIT).until(() -> second.get("/v1/holds", desk).statusCode() == 200);
    traffic.compare(second, desk, wishes);
    await()
        .atMost(LIMIT)
        .until(
            () -> {
              traffic.askAgain(second, desk);
              return traffic.unanswered().isEmpty();
            });
    HoldTraffic.compareTables(second.databasePort());
  }

  /** Also where it failed half-way. */
  @AfterEach
  void endAll() {
    started.forEach(PackagedService::close);
  }

  private PackagedService start() {
    PackagedService service = PackagedService.start(folder, Map.of());
    started.add(service);
    return service;
  }

  private static void killBoth(PackagedService service) {
    service.kill();
    service.killDatabase();
  }

  /** And waits until somebody was told. */
  private void killDatabase(PackagedService service) {
    int before = traffic.putOff();
    service.killDatabase();
    await().atMost(LIMIT).until(() -> traffic.putOff() > before);
  }

  /** Lets clients ask until so many holds are acknowledged, does it, and waits for the clients. */
  private void during(PackagedService service, String desk, int holds, Runnable deed)
      throws Exception {
    AtomicBoolean over = new AtomicBoolean();
    ExecutorService threads = Executors.newFixedThreadPool(CLIENTS);
    try {
      List<Future<?>> clients = new ArrayList<>();
      for (int client = 0; client < CLIENTS; client++) {
        Random random = new Random(holds + client);
        clients.add(
            threads.submit(
                () -> {
                  while (!over.get()) {
                    Map.Entry<String, String> wish = traffic.wish(random);
                    wishes.put(wish.getKey(), wish.getValue());
                    traffic.ask(service, desk, wish);
                  }
                }));
      }
      await().atMost(LIMIT).until(() -> traffic.acknowledged().size() >= holds);
      deed.run();
      over.set(true);
      for (Future<?> client : clients) {
        client.get(LIMIT.toSeconds(), TimeUnit.SECONDS);
      }
    } finally {
      over.set(true);
      threads.shutdownNow();
    }
  }
}
