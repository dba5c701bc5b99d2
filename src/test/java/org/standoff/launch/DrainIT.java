package org.standoff.launch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The packaged service, told to end while it is being asked. Needs no database: none is there. */
class DrainIT {
  private static final Duration START = Duration.ofSeconds(120);
  private static final String QUESTION =
      "{\"source\":\"core/snare\",\"placement\":\"top\",\"distance_m\":0.05,"
          + "\"microphone\":\"core/ldc-multi-1\",\"preamp\":\"core/preamp-16\"}";

  /** The check that tells balancers to send nobody more. */
  private static final String ENDING = "\"Graceful Shutdown\"";

  @TempDir private Path folder;
  private Process service;
  private int port;

  @BeforeEach
  void start() throws IOException {
    port = freePort();
    service =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dquarkus.http.port=" + port,
                "-Dquarkus.datasource.jdbc.url=jdbc:postgresql://127.0.0.1:1/standoff",
                "-Dstandoff.data.folder=" + folder,
                "-jar",
                Path.of("target", "quarkus-app", "quarkus-run.jar").toAbsolutePath().toString())
            .directory(folder.toFile())
            .redirectErrorStream(true)
            .redirectOutput(folder.resolve("log").toFile())
            .start();
    await().atMost(START).pollInterval(Duration.ofMillis(200)).until(this::isLive);
  }

  @AfterEach
  void end() {
    service.destroyForcibly();
  }

  @Test
  void aRequestThatIsInsideIsAnsweredToTheEnd() throws Exception {
    byte[] body = QUESTION.getBytes(StandardCharsets.UTF_8);
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), port)) {
      String head =
          "POST /v1/headroom HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\n"
              + "Connection: close\r\nContent-Length: "
              + body.length
              + "\r\n\r\n";
      socket.getOutputStream().write(head.getBytes(StandardCharsets.ISO_8859_1));
      socket.getOutputStream().write(body, 0, 10);
      socket.getOutputStream().flush();
      await().until(() -> isInside());

      service.destroy();
      await().until(() -> get("/q/health/ready").body().contains(ENDING));
      assertThat(service.isAlive()).isTrue();
      HttpResponse<String> late = get("/v1/sources");
      assertThat(late.statusCode()).as("who did not look is still answered").isEqualTo(200);
      assertThat(late.headers().firstValue("Connection")).hasValue("close");
      socket.getOutputStream().write(body, 10, body.length - 10);
      socket.getOutputStream().flush();
      String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      assertThat(answer).startsWith("HTTP/1.1 200").contains("\"stages\"");
    }
    assertThat(service.waitFor(60, TimeUnit.SECONDS)).isTrue();
  }

  private boolean isInside() throws IOException, InterruptedException {
    return get("/q/metrics").body().contains("standoff_bodies_coming_in 1.0");
  }

  private boolean isLive() throws InterruptedException {
    try {
      return get("/q/health/live").statusCode() == 200;
    } catch (IOException refused) {
      return false;
    }
  }

  private HttpResponse<String> get(String path) throws IOException, InterruptedException {
    return HttpClient.newBuilder()
        .version(HttpClient.Version.HTTP_1_1)
        .build()
        .send(
            HttpRequest.newBuilder(URI.create("http://127.0.0.1:" + port + path)).build(),
            HttpResponse.BodyHandlers.ofString());
  }

  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }
}
