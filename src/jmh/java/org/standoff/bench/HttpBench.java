package org.standoff.bench;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

/**
 * Starts the packaged service as a child and prints what a request costs it: CPU of its JVM per
 * request, throughput and latency at fixed concurrency, each as a ratio to an endpoint of the same
 * service that returns a constant JSON of the same size; then start, memory, and a pack of 10,000
 * files. Nothing is asserted.
 */
public final class HttpBench {
  private static final String HEAP = "-Xmx256m";
  private static final int CONCURRENCY = 8;
  private static final int WARM_UP = 6_000;
  private static final int MEASURED = 12_000;
  private static final int PACK_FILES = 10_000;
  private static final String SETTINGS =
      "/v1/settings?source=core/snare&placement=top&distance_m=0.05"
          + "&microphone=core/ldc-multi-1&preamp=core/preamp-16";
  private static final String HEADROOM =
      "/v1/headroom?peak_db_spl=140&microphone=core/ldc-multi-1&preamp=core/preamp-16";
  private static final String GEOMETRY =
      "/v1/stereo/geometry?pair=core/near-coincident-17-110&azimuth_deg=30&distance_m=2.5";
  private static final String ITEM = "/v1/microphones/core/ldc-multi-1";

  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final Path work;

  private HttpBench(Path work) {
    this.work = work;
  }

  /** The service while it runs. */
  private record Service(Process process, String address) implements AutoCloseable {
    @Override
    public void close() {
      process.destroy();
      process.onExit().join();
    }

    long cpuMicros() {
      return process.info().totalCpuDuration().orElseThrow().toNanos() / 1000;
    }

    long residentMb() {
      try (Stream<String> lines = Files.lines(Path.of("/proc/" + process.pid() + "/status"))) {
        return lines
            .filter(line -> line.startsWith("VmRSS:"))
            .map(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1024)
            .findFirst()
            .orElse(-1L);
      } catch (IOException notLinux) {
        return -1;
      }
    }
  }

  /** Runs the bench in a folder of its own, the first argument. */
  public static void main(String... arguments) throws Exception {
    Path work = Path.of(arguments[0]).toAbsolutePath();
    Files.createDirectories(work);
    HttpBench bench = new HttpBench(work);
    try (Service first = bench.start(List.of())) {
      bench.await(first, SETTINGS);
    }
    bench.requests();
    bench.largePack();
  }

  private void requests() throws Exception {
    Instant begun = Instant.now();
    try (Service service = start(List.of())) {
      await(service, SETTINGS);
      print("first answer on a kept data folder", seconds(begun) + " s");
      print("resident when idle", service.residentMb() + " MB, " + HEAP);
      System.out.printf(
          Locale.ROOT,
          "%n%-28s %8s %12s %8s %10s %8s %8s%n",
          "endpoint",
          "bytes",
          "CPU/request",
          "ratio",
          "requests/s",
          "p50",
          "p99");
      for (String path : List.of(SETTINGS, HEADROOM, GEOMETRY, ITEM)) {
        compare(service, path);
      }
      print("resident under load", service.residentMb() + " MB, " + HEAP);
    }
  }

  private void compare(Service service, String path) throws Exception {
    HttpResponse<byte[]> once = ask(service, path);
    if (once.statusCode() != 200) {
      print(path, "answers " + once.statusCode());
      return;
    }
    int bytes = once.body().length;
    String constant = "/bench/constant?bytes=" + bytes;
    load(service, constant, WARM_UP);
    load(service, path, WARM_UP);
    Cost yardstick = load(service, constant, MEASURED);
    Cost cost = load(service, path, MEASURED);
    cost.print(path.replaceAll("\\?.*", ""), bytes, yardstick);
    yardstick.print("  constant", bytes, yardstick);
  }

  /** What a number of requests cost. */
  private record Cost(double cpuMicros, double perSecond, double p50Ms, double p99Ms) {
    void print(String name, int bytes, Cost yardstick) {
      System.out.printf(
          Locale.ROOT,
          "%-28s %8d %9.0f µs %8.2f %10.0f %5.1f ms %5.1f ms%n",
          name,
          bytes,
          cpuMicros,
          cpuMicros / yardstick.cpuMicros,
          perSecond,
          p50Ms,
          p99Ms);
    }
  }

  private Cost load(Service service, String path, int requests) throws Exception {
    long[] nanos = new long[requests];
    AtomicInteger next = new AtomicInteger();
    CountDownLatch done = new CountDownLatch(CONCURRENCY);
    ExecutorService threads = Executors.newFixedThreadPool(CONCURRENCY);
    long cpuBefore = service.cpuMicros();
    long begun = System.nanoTime();
    for (int i = 0; i < CONCURRENCY; i++) {
      threads.execute(
          () -> {
            for (int n = next.getAndIncrement(); n < requests; n = next.getAndIncrement()) {
              long sent = System.nanoTime();
              ask(service, path);
              nanos[n] = System.nanoTime() - sent;
            }
            done.countDown();
          });
    }
    done.await();
    double seconds = (System.nanoTime() - begun) / 1e9;
    double cpu = (double) (service.cpuMicros() - cpuBefore) / requests;
    threads.shutdown();
    Arrays.sort(nanos);
    return new Cost(
        cpu, requests / seconds, nanos[requests / 2] / 1e6, nanos[requests * 99 / 100] / 1e6);
  }

  private void largePack() throws Exception {
    Path folder = work.resolve("large");
    Path microphones = folder.resolve("many/microphones");
    Files.createDirectories(microphones);
    Files.writeString(
        folder.resolve("many/pack.yaml"),
        "format: 1\nid: many\ntitle: Many\nversion: 1.0.0\nlicence: Apache-2.0\n"
            + "publisher: bench\n");
    String sheet = Files.readString(Path.of("catalogue/core/microphones/ldc-multi-1.yaml"));
    for (int i = 0; i < PACK_FILES; i++) {
      Files.writeString(
          microphones.resolve("m-" + i + ".yaml"),
          sheet.replaceFirst("title: .*", "title: Number " + i));
    }
    Instant begun = Instant.now();
    List<String> folders =
        List.of(
            "-Dstandoff.catalogue.folders=" + Path.of("catalogue").toAbsolutePath() + "," + folder);
    try (Service service = start(folders)) {
      await(service, "/v1/microphones/many/m-9999");
      print("start with a pack of 10,000 files", seconds(begun) + " s");
      load(service, "/v1/microphones/many/m-5000", WARM_UP);
      Cost large = load(service, "/v1/microphones/many/m-5000", MEASURED);
      load(service, ITEM, WARM_UP);
      Cost small = load(service, ITEM, MEASURED);
      print(
          "item of the large pack, of the small",
          String.format(Locale.ROOT, "%.0f µs, %.0f µs", large.cpuMicros, small.cpuMicros));
      Instant asked = Instant.now();
      ask(service, SETTINGS.replaceAll("microphone=[^&]*", "pack=many&limit=1"));
      print("settings that rank the 10,000, first", seconds(asked) + " s");
      asked = Instant.now();
      ask(service, SETTINGS.replaceAll("microphone=[^&]*", "pack=many&limit=1"));
      print("settings that rank the 10,000, again", seconds(asked) + " s");
      Instant changed = Instant.now();
      Files.writeString(
          microphones.resolve("m-77.yaml"), sheet.replaceFirst("title: .*", "title: Changed"));
      while (!new String(ask(service, "/v1/microphones/many/m-77").body()).contains("Changed")) {
        Thread.onSpinWait();
      }
      print("one changed file of it is live after", seconds(changed) + " s");
    }
  }

  private Service start(List<String> options) throws IOException {
    int port;
    try (ServerSocket free = new ServerSocket(0)) {
      port = free.getLocalPort();
    }
    List<String> command = new ArrayList<>(List.of("java", HEAP));
    command.addAll(options);
    command.addAll(
        List.of(
            "-Dquarkus.http.port=" + port,
            "-Dstandoff.data.folder=" + work.resolve("data"),
            "-jar",
            "target/quarkus-app/quarkus-run.jar"));
    Process process =
        new ProcessBuilder(command)
            .redirectErrorStream(true)
            .redirectOutput(work.resolve("service.log").toFile())
            .start();
    return new Service(process, "http://127.0.0.1:" + port);
  }

  private void await(Service service, String path) throws InterruptedException {
    while (service.process().isAlive()) {
      try {
        if (ask(service, path).statusCode() == 200) {
          return;
        }
      } catch (UncheckedIOException notYet) {
        Thread.sleep(20);
      }
    }
    throw new IllegalStateException("the service ended; see " + work.resolve("service.log"));
  }

  private HttpResponse<byte[]> ask(Service service, String path) {
    HttpRequest request =
        HttpRequest.newBuilder(URI.create(service.address() + path))
            .timeout(Duration.ofSeconds(30))
            .header("Accept", "application/json")
            .build();
    try {
      return client.send(request, HttpResponse.BodyHandlers.ofByteArray());
    } catch (IOException failed) {
      throw new UncheckedIOException(failed);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(interrupted);
    }
  }

  private static String seconds(Instant since) {
    return String.format(
        Locale.ROOT, "%.2f", Duration.between(since, Instant.now()).toMillis() / 1000.0);
  }

  private static void print(String name, String figure) {
    System.out.printf(Locale.ROOT, "%-44s %s%n", name, figure);
  }
}
