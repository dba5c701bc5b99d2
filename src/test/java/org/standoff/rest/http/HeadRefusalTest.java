package org.standoff.rest.http;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.netty.buffer.ByteBuf;
import io.netty.buffer.Unpooled;
import io.netty.channel.ChannelFuture;
import io.netty.channel.embedded.EmbeddedChannel;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.fixture.Ask;
import org.standoff.fixture.NumbersInProblems;

/** On a connection whose clock the test moves. */
class HeadRefusalTest {

  private static final String BARE = "HTTP/1.1 %d Some\r\nContent-Length: 0\r\n\r\n";

  private final EmbeddedChannel connection = new EmbeddedChannel();

  @BeforeEach
  void stand() {
    connection.freezeTime();
    connection
        .pipeline()
        .addFirst(
            HeadRefusal.NAME, new HeadRefusal(new HeadLimits(Duration.ofMillis(2_500), 7, 9)));
  }

  @AfterEach
  void end() {
    connection.finishAndReleaseAll();
  }

  private String said(String answer) {
    connection.writeOutbound(Unpooled.copiedBuffer(answer, StandardCharsets.US_ASCII));
    ByteBuf said = connection.readOutbound();
    String text = said.toString(StandardCharsets.UTF_8);
    said.release();
    return text;
  }

  private void pass(long seconds) {
    connection.advanceTimeBy(seconds, TimeUnit.SECONDS);
    connection.runScheduledPendingTasks();
  }

  @ParameterizedTest
  @CsvSource({
    "400, INVALID_REQUEST, '', ''",
    "408, TOO_SLOW, head_within_s, 2.5",
    "414, ADDRESS_TOO_LONG, max_request_line_bytes, 7",
    "431, HEADERS_TOO_LARGE, max_headers_bytes, 9",
    "500, INTERNAL, '', ''"
  })
  void whatIsRefusedBeforeThereIsARequestIsAProblemToo(
      int status, String code, String member, String value) {
    List<String> parts = List.of(said(BARE.formatted(status)).split("\r\n\r\n"));
    JsonNode problem = Ask.tree(parts.get(1));
    assertThat(parts.get(0))
        .startsWith("HTTP/1.1 " + status + " ")
        .contains("\r\nContent-Type: application/problem+json\r\n")
        .contains("\r\nContent-Length: " + parts.get(1).length() + "\r\n")
        .contains("\r\nContent-Language: en\r\n")
        .contains(
            "\r\nRequest-Id: " + problem.path("instance").asText().substring("urn:uuid:".length()))
        .endsWith("\r\nConnection: close");
    assertThat(problem.path("status").asInt()).isEqualTo(status);
    assertThat(problem.path("code").asText()).isEqualTo(code);
    assertThat(problem.path(member).asText()).isEqualTo(value);
    assertThat(NumbersInProblems.untold(problem)).isEmpty();
  }

  @Test
  void anAnswerToARequestIsLeftAsItIs() {
    connection.pipeline().fireUserEventTriggered(HeadTimeout.WHOLE);
    assertThat(said(BARE.formatted(404))).isEqualTo(BARE.formatted(404));
    connection.pipeline().fireUserEventTriggered(HeadTimeout.OVER);
    assertThat(said(BARE.formatted(404))).as("of no request").contains("application/problem+json");
  }

  @ParameterizedTest
  @CsvSource({"HTTP/1.1 100 Continue", "HTTP/1.1 101 Switching Protocols", "PRI * HTTP/2.0", "x"})
  void whatIsNoRefusalIsLeftAsItIs(String said) {
    assertThat(said(said)).isEqualTo(said);
  }

  @Test
  void whoStillSendsIsHeardOutForTwoSecondsAndNothingMoreIsSaid() {
    said(BARE.formatted(431));
    ChannelFuture closed = connection.pipeline().close();
    connection.writeInbound(Unpooled.copiedBuffer("more", StandardCharsets.US_ASCII));
    assertThat((Object) connection.readInbound()).as("nobody reads it any more").isNull();
    connection.writeOutbound(Unpooled.copiedBuffer("words", StandardCharsets.US_ASCII));
    assertThat((Object) connection.readOutbound()).isNull();
    pass(HeadRefusal.LINGERS_S - 1);
    assertThat(connection.isOpen()).isTrue();
    assertThat(closed.isDone()).isFalse();
    pass(1);
    assertThat(connection.isOpen()).isFalse();
    assertThat(closed.isSuccess()).isTrue();
  }
}
