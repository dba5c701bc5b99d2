package org.standoff.bench;

import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.Optional;
import org.standoff.fixture.PackagedService;

/** The packaged service on a database that runs already, asked over connections that are kept. */
final class RunningService implements AutoCloseable {
  private final HttpClient client =
      HttpClient.newBuilder().version(HttpClient.Version.HTTP_1_1).build();
  private final PackagedService service;

  RunningService(Path work, String jdbcUrl) {
    this.service =
        PackagedService.start(
            work.resolve("service"),
            Map.of(
                "JAVA_TOOL_OPTIONS",
                "-Xmx512m",
                "QUARKUS_DATASOURCE_JDBC_URL",
                jdbcUrl,
                "QUARKUS_DATASOURCE_USERNAME",
                "postgres",
                "QUARKUS_DATASOURCE_PASSWORD",
                "postgres"));
  }

  /** A bearer token that it takes, for an hour. */
  String token(String role, Optional<String> house, String subject) {
    return service.token(role, house, subject);
  }

  /** Sends a body and waits for the answer. */
  HttpResponse<String> send(
      String method, String path, String token, Map<String, String> headers, String body) {
    HttpRequest.Builder request =
        HttpRequest.newBuilder(service.at(path))
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
    return ProcessHandle.of(service.pid())
            .flatMap(process -> process.info().totalCpuDuration())
            .orElse(Duration.ZERO)
            .toNanos()
        / 1000;
  }

  @Override
  public void close() {
    service.close();
  }
}
