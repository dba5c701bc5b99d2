package org.standoff.bench;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.LongStream;
import java.util.stream.Stream;

/**
 * Starts the packaged service as a child and prints what a request to each described operation that
 * changes nothing costs it: CPU of its JVM per request, throughput and latency at fixed
 * concurrency, beside those of an endpoint of the same service that returns a constant JSON of the
 * same size, and as ratios to them; then start, memory, and a pack of 10,000 files. Nothing is
 * asserted.
 */
public final class HttpBench {
  private static final Path DESCRIPTION = Path.of("openapi", "standoff.yaml");
  private static final String HEAP = "-Xmx256m";
  private static final int CONCURRENCY = 8;
  private static final Duration FIRST_WARM_UP = Duration.ofSeconds(8);
  private static final Duration WARM_UP = Duration.ofSeconds(2);
  private static final Duration YARDSTICK = Duration.ofMillis(1500);
  private static final Duration MEASURED = Duration.ofSeconds(2);
  private static final int PACK_FILES = 10_000;
  private static final String SETTINGS =
      "/v1/settings?source=core/snare&placement=top&distance_m=0.05"
          + "&microphone=core/ldc-multi-1&preamp=core/preamp-16";
  private static final String ITEM = "/v1/microphones/core/ldc-multi-1";

  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final Path work;

  private String token = "";

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
      token = adminToken();
      standTheHousesOfTheDemo(service);
      publishTheExamples(service);
      load(service, DescribedCall.get("/bench/constant?bytes=2000"), FIRST_WARM_UP);
      List<DescribedCall> calls = DescribedCall.harmless(DESCRIPTION, holdOf(service));
      // all of them before any is measured, so that the first rows pay less for the compiler
      for (DescribedCall call : calls) {
        load(service, call, WARM_UP);
      }
      System.out.printf(
          "%n%-48s %7s %11s %6s %10s %6s %9s %9s %6s%n",
          "operation", "bytes", "CPU", "ratio", "requests/s", "ratio", "p50", "p99", "ratio");
      for (DescribedCall call : calls) {
        compare(service, call);
      }
      print("resident under load", service.residentMb() + " MB, " + HEAP);
    }
  }

  private void compare(Service service, DescribedCall call) throws Exception {
    HttpResponse<byte[]> once = ask(service, call);
    if (once.statusCode() != 200) {
      print(call.name(), "answers " + once.statusCode());
      return;
    }
    int bytes = once.body().length;
    DescribedCall constant = DescribedCall.get("/bench/constant?bytes=" + bytes);
    Cost yardstick = load(service, constant, YARDSTICK);
    Cost cost = load(service, call, MEASURED);
    System.out.printf(
        Locale.ROOT,
        "%-48s %7d %8.0f µs %6.1f %10.0f %6.2f %6.1f ms %6.1f ms %6.1f%n",
        call.name(),
        bytes,
        cost.cpuMicros,
        cost.cpuMicros / yardstick.cpuMicros,
        cost.perSecond,
        cost.perSecond / yardstick.perSecond,
        cost.p50Ms,
        cost.p99Ms,
        cost.p99Ms / yardstick.p99Ms);
  }

  /** What requests cost. */
  private record Cost(double cpuMicros, double perSecond, double p50Ms, double p99Ms) {}

  private Cost load(Service service, DescribedCall call, Duration time) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(CONCURRENCY);
    long cpuBefore = service.cpuMicros();
    long begun = System.nanoTime();
    long end = begun + time.toNanos();
    List<Future<LongStream.Builder>> clients = new ArrayList<>();
    for (int i = 0; i < CONCURRENCY; i++) {
      clients.add(
          threads.submit(
              () -> {
                LongStream.Builder nanos = LongStream.builder();
                for (long sent = System.nanoTime(); sent < end; ) {
                  ask(service, call);
                  long answered = System.nanoTime();
                  nanos.add(answered - sent);
                  sent = answered;
                }
                return nanos;
              }));
    }
    LongStream all = LongStream.empty();
    for (Future<LongStream.Builder> client : clients) {
      all = LongStream.concat(all, client.get().build());
    }
    double seconds = (System.nanoTime() - begun) / 1e9;
    threads.shutdown();
    long[] nanos = all.sorted().toArray();
    double cpu = (double) (service.cpuMicros() - cpuBefore) / nanos.length;
    return new Cost(
        cpu,
        nanos.length / seconds,
        nanos[nanos.length / 2] / 1e6,
        nanos[nanos.length * 99 / 100] / 1e6);
  }

  private String adminToken() throws IOException, InterruptedException {
    Process minting =
        new ProcessBuilder(
                "java",
                "-Dstandoff.data.folder=" + work.resolve("data"),
                "-jar",
                "target/quarkus-app/quarkus-run.jar",
                "token",
                "--role",
                "admin")
            .redirectError(work.resolve("token.log").toFile())
            .start();
    String told = new String(minting.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    minting.waitFor();
    return told.strip();
  }

  private void publishTheExamples(Service service) throws IOException {
    for (DescribedCall call : DescribedCall.publishing(DESCRIPTION)) {
      for (String condition : List.of("If-None-Match", "If-Match")) {
        ask(service, call, condition, "*");
      }
    }
  }

  /** One of the holds of the demo. */
  private String holdOf(Service service) throws IOException {
    return new ObjectMapper()
        .readTree(
            ask(
                    service,
                    new DescribedCall(
                        "a hold", "GET", "/v1/holds", "application/json", Optional.empty(), true))
                .body())
        .at("/items/0/id")
        .asText();
  }

  /** Without them the questions about kit are asked in vain, and the table says so. */
  private void standTheHousesOfTheDemo(Service service) throws IOException, InterruptedException {
    ProcessBuilder caller =
        new ProcessBuilder("python3", "openapi/examples/boathouse_houses.py")
            .redirectErrorStream(true)
            .redirectOutput(work.resolve("houses.log").toFile());
    caller.environment().put("STANDOFF_URL", service.address());
    caller.environment().put("STANDOFF_TOKEN", token);
    caller.start().waitFor();
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
      DescribedCall ofMany = DescribedCall.get("/v1/microphones/many/m-5000");
      DescribedCall ofCore = DescribedCall.get(ITEM);
      load(service, ofMany, FIRST_WARM_UP);
      load(service, ofCore, FIRST_WARM_UP);
      Cost large = load(service, ofMany, MEASURED);
      Cost small = load(service, ofCore, MEASURED);
      print(
          "item of the large pack, of the small",
          String.format(Locale.ROOT, "%.0f µs, %.0f µs", large.cpuMicros, small.cpuMicros));
      DescribedCall ranking =
          DescribedCall.get(SETTINGS.replaceAll("microphone=[^&]*", "pack=many&limit=1"));
      Instant asked = Instant.now();
      ask(service, ranking);
      print("settings that rank the 10,000, first", seconds(asked) + " s");
      asked = Instant.now();
      ask(service, ranking);
      print("settings that rank the 10,000, again", seconds(asked) + " s");
      Instant changed = Instant.now();
      Files.writeString(
          microphones.resolve("m-77.yaml"), sheet.replaceFirst("title: .*", "title: Changed"));
      DescribedCall one = DescribedCall.get("/v1/microphones/many/m-77");
      while (!new String(ask(service, one).body(), StandardCharsets.UTF_8).contains("Changed")) {
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
        if (ask(service, DescribedCall.get(path)).statusCode() == 200) {
          return;
        }
      } catch (UncheckedIOException notYet) {
        Thread.sleep(20);
      }
    }
    throw new IllegalStateException("the service ended; see " + work.resolve("service.log"));
  }

  private HttpResponse<byte[]> ask(Service service, DescribedCall call, String... headers) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(service.address() + call.target()))
            .timeout(Duration.ofSeconds(30))
            .header("Accept", call.accept())
            .method(
                call.method(),
                call.body()
                    .map(HttpRequest.BodyPublishers::ofString)
                    .orElseGet(HttpRequest.BodyPublishers::noBody));
    if (headers.length > 0) {
      request.headers(headers);
    }
    if (call.body().isPresent()) {
      request.header("Content-Type", "application/json");
    }
    if (call.wantsToken()) {
      request.header("Authorization", "Bearer " + token);
    }
    try {
      return client.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
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
