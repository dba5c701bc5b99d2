package org.standoff.bench;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The packaged service as a child process, on a database that runs already. */
final class RunningService implements AutoCloseable {
  private static final String JAR = "target/quarkus-app/quarkus-run.jar";

  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final Path work;
  private final Process process;
  private final String address;

  RunningService(Path work, String jdbcUrl) throws IOException, InterruptedException {
    this.work = work;
    int port;
    try (ServerSocket free = new ServerSocket(0)) {
      port = free.getLocalPort();
    }
    this.address = "http://127.0.0.1:" + port;
    List<String> options =
        List.of(
            "-Xmx512m",
            "-Dquarkus.http.port=" + port,
            "-Dquarkus.datasource.jdbc.url=" + jdbcUrl,
            "-Dquarkus.datasource.username=postgres",
            "-Dquarkus.datasource.password=postgres");
    this.process =
        new ProcessBuilder(command(options, List.of()))
            .redirectErrorStream(true)
            .redirectOutput(work.resolve("service.log").toFile())
            .start();
    awaitAnswer();
  }

  /** A bearer token, by the service's own command. */
  String token(String... words) throws IOException, InterruptedException {
    List<String> asked = new ArrayList<>(List.of("token"));
    asked.addAll(List.of(words));
    Process command =
        new ProcessBuilder(command(List.of(), asked))
            .redirectError(ProcessBuilder.Redirect.INHERIT)
            .start();
    String token = new String(command.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    if (command.waitFor() != 0) {
      throw new IllegalStateException("no token");
    }
    return token.strip();
  }

  /** Sends a body and waits for the answer. */
  HttpResponse<String> send(
      String method, String path, String token, Map<String, String> headers, String body) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(URI.create(address + path))
            .timeout(Duration.ofMinutes(5))
            .header("Accept", "application/json")
            .header("Authorization", "Bearer " + token)
            .method(method, HttpRequest.BodyPublishers.ofString(body));
    headers.forEach(request::header);
    try {
      return client.send(request.build(), HttpResponse.BodyHandlers.ofString());
    } catch (IOException failed) {
      throw new IllegalStateException(failed);
    } catch (InterruptedException interrupted) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(interrupted);
    }
  }

  /** CPU that it has used so far, in µs. */
  long cpuMicros() {
    return process.info().totalCpuDuration().orElse(Duration.ZERO).toNanos() / 1000;
  }

  @Override
  public void close() {
    process.destroy();
    process.onExit().join();
  }

  private List<String> command(List<String> options, List<String> words) {
    List<String> command = new ArrayList<>(List.of("java"));
    command.addAll(options);
    command.add("-Dstandoff.data.folder=" + work.resolve("service"));
    command.addAll(List.of("-jar", JAR));
    command.addAll(words);
    return command;
  }

  private void awaitAnswer() throws IOException, InterruptedException {
    HttpRequest ready =
        HttpRequest.newBuilder(URI.create(address + "/v1/availability?" + ONE_MODEL)).build();
    while (process.isAlive()) {
      try {
        // 422: it looked the house up
        if (client.send(ready, HttpResponse.BodyHandlers.discarding()).statusCode() < 500) {
          return;
        }
      } catch (IOException notYet) {
        // the next attempt tells
      }
      Thread.sleep(50);
    }
    throw new IOException("the service ended; see " + work.resolve("service.log"));
  }

  private static final String ONE_MODEL =
      "microphone=bench/m-1&houses=bench-1&from=2027-06-11T08:00:00Z&to=2027-06-12T08:00:00Z";
}
