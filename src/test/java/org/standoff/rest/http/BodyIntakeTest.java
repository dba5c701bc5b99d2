package org.standoff.rest.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.TestProfile;
import io.restassured.RestAssured;
import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.HalfSent;
import org.standoff.fixture.SetOtherwise;

/** Bodies that come in badly, with a time for them that is short enough to wait for. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
@TestProfile(SetOtherwise.class)
class BodyIntakeTest {

  private static final String QUESTION =
      "{\"source\":\"core/snare\",\"placement\":\"top\",\"distance_m\":0.05,"
          + "\"microphone\":\"core/ldc-multi-1\",\"preamp\":\"core/preamp-16\"}";

  @Test
  void aBodyThatDoesNotComeIsToldItsTimeAndTheConnectionEnds() throws IOException {
    try (Socket stalled = HalfSent.post()) {
      assertThat(all(stalled))
          .startsWith("HTTP/1.1 408 ")
          .containsIgnoringCase("connection: close")
          .contains("\"code\":\"TOO_SLOW\"", "within 1.5 s", "\"body_within_s\":1.5");
    }
  }

  /** Or what still comes of it would be the head of another request, which is never whole. */
  @Test
  void aConnectionOfWhichABodyIsNotWaitedForEndsAfterTheAnswer() throws IOException {
    try (Socket caller = new Socket(InetAddress.getLoopbackAddress(), RestAssured.port)) {
      write(
          caller.getOutputStream(),
          "POST /v1/;x HTTP/1.1\r\nHost: localhost\r\nContent-Length: 100\r\n\r\n{");
      assertThat(all(caller))
          .startsWith("HTTP/1.1 404 ")
          .containsIgnoringCase("connection: close")
          .containsOnlyOnce("HTTP/1.1");
    }
  }

  /** The long limit is of sheets, and of the one address that takes them. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/v1/headroom             | text/csv                | 1048576",
        "/v1/houses/quill/units/1 | text/csv                | 1048576",
        "/v1/houses/quill/units   | text/csvx               | 1048576",
        "/v1/houses/quill/units   | application/json        | 1048576",
        "/v1/houses/quill/units   | text/csv                | 33554432",
        "/v1/houses/quill/units   | Text/CSV; charset=UTF-8 | 33554432"
      })
  void onlyASheetOfAKitMayBeLong(String path, String type, int bytes) {
    assertThat(BodyLimit.of(path, type)).isEqualTo(bytes);
  }

  @Test
  void aBodyInPiecesIsReadWhole() throws IOException {
    try (Socket caller = post("Transfer-Encoding: chunked\r\n")) {
      OutputStream out = caller.getOutputStream();
      for (String part : QUESTION.split("(?<=,)")) {
        write(out, Integer.toHexString(part.length()) + "\r\n" + part + "\r\n");
      }
      write(out, "0\r\n\r\n");
      assertThat(all(caller)).startsWith("HTTP/1.1 200 ").contains("\"stages\"");
    }
  }

  @Test
  void aBodyThatTurnsOutTooLongIsRefusedBeforeItEnds() throws IOException {
    try (Socket caller = post("Transfer-Encoding: chunked\r\n")) {
      write(caller.getOutputStream(), "100001\r\n" + " ".repeat(0x100001) + "\r\n");
      assertThat(all(caller))
          .startsWith("HTTP/1.1 413 ")
          .contains("\"code\":\"TOO_LARGE\"", "\"max_body_bytes\":1048576");
    }
  }

  @Test
  void whoAsksBeforeSendingIsToldToGoOn() throws IOException {
    try (Socket caller =
        post("Expect: 100-continue\r\nContent-Length: " + QUESTION.length() + "\r\n")) {
      byte[] goOn = "HTTP/1.1 100 Continue\r\n\r\n".getBytes(StandardCharsets.ISO_8859_1);
      assertThat(caller.getInputStream().readNBytes(goOn.length)).isEqualTo(goOn);
      write(caller.getOutputStream(), QUESTION);
      assertThat(all(caller)).startsWith("HTTP/1.1 200 ").contains("\"stages\"");
    }
  }

  private static Socket post(String headers) throws IOException {
    Socket socket = new Socket(InetAddress.getLoopbackAddress(), RestAssured.port);
    write(
        socket.getOutputStream(),
        "POST /v1/headroom HTTP/1.1\r\nHost: localhost\r\nConnection: close\r\n"
            + "Content-Type: application/json\r\n"
            + headers
            + "\r\n");
    return socket;
  }

  private static void write(OutputStream out, String text) throws IOException {
    out.write(text.getBytes(StandardCharsets.ISO_8859_1));
    out.flush();
  }

  /** Ends when the service closes the connection. */
  private static String all(Socket socket) throws IOException {
    return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
  }
}
