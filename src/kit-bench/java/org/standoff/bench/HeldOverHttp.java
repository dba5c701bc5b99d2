package org.standoff.bench;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.UUID;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Holds of one unit each over HTTP, as many at a time as there are clients. */
final class HeldOverHttp {

  private final RunningService service;
  private final String token;

  HeldOverHttp(RunningService service, String token) {
    this.service = service;
    this.token = token;
  }

  /**
   * What a run of holds gave.
   *
   * @param perSecond holds that were acknowledged, per second
   * @param medianMs half of them took no longer, in ms
   * @param slowMs 99 of 100 took no longer, in ms
   * @param cpuMicros of the service for each, in µs
   */
  record Rate(double perSecond, double medianMs, double slowMs, double cpuMicros) {
    @Override
    public String toString() {
      return String.format(
          Locale.ROOT,
          "%.0f per second, %.1f ms (99 %%: %.1f), %.0f µs CPU",
          perSecond,
          medianMs,
          slowMs,
          cpuMicros);
    }
  }

  Rate run(int clients, Duration time) throws ExecutionException, InterruptedException {
    ExecutorService threads = Executors.newFixedThreadPool(clients);
    long cpuBefore = service.cpuMicros();
    long begun = System.nanoTime();
    List<Future<List<Long>>> running = new ArrayList<>();
    for (int client = 0; client < clients; client++) {
      Random random = new Random();
      running.add(threads.submit(() -> holdUntil(begun + time.toNanos(), random)));
    }
    threads.shutdown();
    List<Long> all = new ArrayList<>();
    for (Future<List<Long>> one : running) {
      all.addAll(one.get());
    }
    double seconds = (System.nanoTime() - begun) / 1e9;
    long[] nanos = all.stream().mapToLong(Long::longValue).sorted().toArray();
    return new Rate(
        nanos.length / seconds,
        nanos[nanos.length / 2] / 1e6,
        nanos[nanos.length * 99 / 100] / 1e6,
        (double) (service.cpuMicros() - cpuBefore) / nanos.length);
  }

  private List<Long> holdUntil(long end, Random random) {
    List<Long> nanos = new ArrayList<>();
    while (System.nanoTime() < end) {
      Instant from =
          Instant.now()
              .truncatedTo(ChronoUnit.HOURS)
              .plus(Duration.ofDays(60 + random.nextInt(300)));
      String body =
          """
          {"reference": "%s", "from": "%s", "to": "%s", "lifetime_min": 1440,
           "lines": [{"house": "bench-%d", "microphone": "bench/m-%d"}]}
          """
              .formatted(
                  UUID.randomUUID(),
                  from,
                  from.plus(Duration.ofDays(2)),
                  random.nextInt(20),
                  random.nextInt(500));
      long sent = System.nanoTime();
      HttpResponse<String> answer =
          service.send(
              "POST",
              "/v1/holds",
              token,
              Map.of(
                  "Content-Type",
                  "application/json",
                  "Idempotency-Key",
                  "\"" + UUID.randomUUID() + "\""),
              body);
      if (answer.statusCode() / 100 != 2) {
        throw new IllegalStateException(answer.statusCode() + " " + answer.body());
      }
      nanos.add(System.nanoTime() - sent);
    }
    return nanos;
  }
}
