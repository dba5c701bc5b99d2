package org.standoff.load;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.standoff.fixture.PackagedService;

/**
 * Clients that ask, think and ask again, each on a connection of its own, and some hostile ones.
 */
final class Crowd {

  private final PackagedService service;
  private final String token;
  private final Duration thinking;
  private final Tally decent = new Tally();
  private final Tally hostile = new Tally();
  private final HttpClient http =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();

  /**
   * @param token of a desk
   * @param thinking how long a decent client waits between an answer and its next question, on
   *     average; a hostile one does not wait
   */
  Crowd(PackagedService service, String token, Duration thinking) {
    this.service = service;
    this.token = token;
    this.thinking = thinking;
  }

  /** What the decent ones were told. */
  Tally decent() {
    return decent;
  }

  /** What the others were told. */
  Tally hostile() {
    return hostile;
  }

  /** Returns when the time is over and everybody has their answer. */
  Crowd ask(int decentClients, int hostileClients, Duration time)
      throws InterruptedException, ExecutionException {
    long end = System.nanoTime() + time.toNanos();
    ExecutorService threads = Executors.newFixedThreadPool(decentClients + hostileClients);
    List<Future<?>> clients = new ArrayList<>();
    for (int client = 0; client < decentClients; client++) {
      Random random = new Random(client);
      clients.add(threads.submit(() -> askUntil(end, random)));
    }
    for (int client = 0; client < hostileClients; client++) {
      Random random = new Random(-1 - client);
      clients.add(threads.submit(() -> annoyUntil(end, random)));
    }
    for (Future<?> client : clients) {
      client.get();
    }
    threads.shutdown();
    return this;
  }

  private Void askUntil(long end, Random random) throws InterruptedException {
    pause(random);
    while (System.nanoTime() < end) {
      long sent = System.nanoTime();
      try {
        HttpResponse<String> answer =
            http.send(Question.any(service, token, random), HttpResponse.BodyHandlers.ofString());
        decent.answered(answer.statusCode(), answer.headers(), System.nanoTime() - sent);
        Thread.sleep(1000 * answer.headers().firstValueAsLong("Retry-After").orElse(0));
      } catch (IOException broken) {
        decent.note("broken: " + broken.getMessage());
      }
      pause(random);
    }
    return null;
  }

  private Void annoyUntil(long end, Random random) throws InterruptedException {
    while (System.nanoTime() < end) {
      Hostility.commit(service.port(), random, hostile);
    }
    return null;
  }

  private void pause(Random random) throws InterruptedException {
    Thread.sleep((long) (thinking.toMillis() * 2 * random.nextDouble()));
  }
}
