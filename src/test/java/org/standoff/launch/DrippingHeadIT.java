package org.standoff.launch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standoff.fixture.Ask;
import org.standoff.fixture.NumbersInProblems;
import org.standoff.fixture.PackagedService;

/** The packaged service closes a connection whose head comes byte by byte, and no other. */
class DrippingHeadIT {

  private static final String DRIP = "GET /q/health/live HTTP/1.1\r\nX-Long: ";
  private static final String ASKED = "GET /v1/packs HTTP/1.1\r\nHost: localhost\r\n\r\n";

  private static final Pattern LENGTH = Pattern.compile("(?i)content-length: (\\d+)");

  @TempDir Path folder;

  @Test
  void whoDripsIsToldAndCutOffWhileOthersOnKeptConnectionsAreAnswered() throws Exception {
    try (PackagedService service =
            PackagedService.start(folder, Map.of("STANDOFF_LIMITS_HEAD_WITHIN", "1s"));
        Socket kept = connect(service);
        Socket dripping = connect(service)) {
      ask(kept);
      int[] sent = {0};
      await()
          .atMost(Duration.ofMinutes(1))
          .pollInterval(Duration.ofMillis(100))
          .until(
              () -> {
                dripping
                    .getOutputStream()
                    .write(sent[0] < DRIP.length() ? DRIP.charAt(sent[0]) : 'x');
                sent[0]++;
                return dripping.getInputStream().available() > 0;
              });
      String told = new String(dripping.getInputStream().readAllBytes(), StandardCharsets.US_ASCII);
      String[] parts = told.split("\r\n\r\n", 2);
      JsonNode problem = Ask.tree(parts[1]);
      assertThat(parts[0])
          .startsWith("HTTP/1.1 408 ")
          .contains("Content-Type: application/problem+json")
          .contains("Connection: close")
          .contains(problem.path("instance").asText().replace("urn:uuid:", "Request-Id: "));
      assertThat(problem.path("code").asText()).isEqualTo("TOO_SLOW");
      assertThat(problem.path("head_within_s").asInt()).isEqualTo(1);
      assertThat(NumbersInProblems.untold(problem)).isEmpty();
      ask(kept);
    }
  }

  private static Socket connect(PackagedService service) throws IOException {
    return new Socket(InetAddress.getLoopbackAddress(), service.port());
  }

  /** Asks, and reads the whole answer. */
  private static void ask(Socket connection) throws IOException {
    connection.getOutputStream().write(ASKED.getBytes(StandardCharsets.US_ASCII));
    connection.getOutputStream().flush();
    StringBuilder head = new StringBuilder();
    while (head.indexOf("\r\n\r\n") < 0) {
      head.append((char) connection.getInputStream().read());
    }
    assertThat(head).startsWith("HTTP/1.1 200");
    Matcher length = LENGTH.matcher(head);
    assertThat(length.find()).isTrue();
    connection.getInputStream().readNBytes(Integer.parseInt(length.group(1)));
  }
}
