package org.standoff.launch;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.fixture.Ask;
import org.standoff.fixture.NumbersInProblems;
import org.standoff.fixture.PackagedService;
import org.standoff.fixture.RawHttp;

/** What the packaged service says to a head that it can't take, byte by byte as it is sent. */
class RefusedHeadIT {

  private static PackagedService service;

  @BeforeAll
  static void start(@TempDir Path folder) {
    service = PackagedService.start(folder, Map.of());
  }

  @AfterAll
  static void stop() {
    service.close();
  }

  @Test
  void aLineAsLongAsIsAllowedIsRead() throws IOException {
    assertThat(RawHttp.send(service.port(), lineOf(4096))).startsWith("HTTP/1.1 404 ");
  }

  @ParameterizedTest
  @ValueSource(ints = {4097, 100_000})
  void aLineThatIsLongerIsAProblemThatTellsHowLongItMayBe(int bytes) throws IOException {
    JsonNode problem = problem(RawHttp.send(service.port(), lineOf(bytes)), 414);
    assertThat(problem.path("code").asText()).isEqualTo("ADDRESS_TOO_LONG");
    assertThat(problem.path("max_request_line_bytes").asInt()).isEqualTo(4096);
  }

  @ParameterizedTest
  @ValueSource(ints = {20_480, 1_000_000})
  void headersThatAreLargerAreAProblemThatTellsHowLargeTheyMayBe(int bytes) throws IOException {
    String answer =
        RawHttp.send(service.port(), "GET /v1/packs HTTP/1.1", "X-Long: " + "x".repeat(bytes));
    JsonNode problem = problem(answer, 431);
    assertThat(problem.path("code").asText()).isEqualTo("HEADERS_TOO_LARGE");
    assertThat(problem.path("max_headers_bytes").asInt()).isEqualTo(20_480);
  }

  @Test
  void headersBelowTheLimitAreRead() throws IOException {
    assertThat(
            RawHttp.send(service.port(), "GET /v1/packs HTTP/1.1", "X-Long: " + "x".repeat(20_000)))
        .startsWith("HTTP/1.1 200 ");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "GET /v1/packs%zz HTTP/1.1",
        "GET /v1/packs?page_size=%zz HTTP/1.1",
        "GET /v1/packs HTTP/1.1\r\nno header",
        "garbage"
      })
  void whatIsNoHeadIsAProblemToo(String head) throws IOException {
    assertThat(problem(RawHttp.send(service.port(), head), 400).path("code").asText())
        .isEqualTo("INVALID_REQUEST");
  }

  private static String lineOf(int bytes) {
    String around = "GET /" + " HTTP/1.1";
    return "GET /" + "x".repeat(bytes - around.length()) + " HTTP/1.1";
  }

  private static JsonNode problem(String answer, int status) {
    String[] parts = answer.split("\r\n\r\n", 2);
    assertThat(parts[0])
        .startsWith("HTTP/1.1 " + status + " ")
        .containsIgnoringCase("\r\nContent-Type: application/problem+json")
        .containsIgnoringCase("\r\nConnection: close");
    JsonNode problem = Ask.tree(parts[1]);
    assertThat(problem.path("status").asInt()).isEqualTo(status);
    assertThat(parts[0])
        .containsIgnoringCase(
            "\r\nRequest-Id: " + problem.path("instance").asText().substring("urn:uuid:".length()));
    assertThat(NumbersInProblems.untold(problem)).isEmpty();
    return problem;
  }
}
