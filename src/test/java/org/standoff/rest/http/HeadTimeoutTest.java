package org.standoff.rest.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.netty.buffer.ByteBuf;
import io.netty.buffer.Unpooled;
import io.netty.channel.embedded.EmbeddedChannel;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** On a connection whose clock the test moves. */
class HeadTimeoutTest {

  private static final String WHOLE = "standoff-head-whole";
  private static final String OVER = "standoff-request-over";

  private final EmbeddedChannel connection = new EmbeddedChannel();

  @BeforeEach
  void watch() {
    connection.freezeTime();
    connection.pipeline().addFirst(HeadTimeout.NAME, new HeadTimeout(Duration.ofSeconds(10)));
  }

  @AfterEach
  void end() {
    connection.finishAndReleaseAll();
  }

  private void hear(String bytes) {
    connection.writeInbound(Unpooled.copiedBuffer(bytes, StandardCharsets.US_ASCII));
  }

  private void say(String word) {
    connection.pipeline().fireUserEventTriggered(word);
  }

  private void pass(long seconds) {
    connection.advanceTimeBy(seconds, TimeUnit.SECONDS);
    connection.runScheduledPendingTasks();
  }

  @Test
  void aHeadThatDripsIsEndedTenSecondsAfterItsFirstByte() {
    for (int second = 0; second < 10; second++) {
      assertThat(connection.isOpen()).as("after %d s", second).isTrue();
      hear("G");
      pass(1);
    }
    assertThat(connection.isOpen()).isFalse();
    ByteBuf answer = connection.readOutbound();
    assertThat(answer.toString(StandardCharsets.US_ASCII)).startsWith("HTTP/1.1 408 ");
    answer.release();
  }

  @Test
  void whoSaysNothingIsLeftToTheTimeOutOfIdleConnections() {
    pass(1000);
    assertThat(connection.isOpen()).isTrue();
  }

  @Test
  void aRequestThatIsWholeMaySendItsBodyAsSlowlyAsItsOwnLimitLets() {
    hear("POST / HTTP/1.1\r\n\r\n");
    say(WHOLE);
    for (int second = 0; second < 60; second++) {
      hear("x");
      pass(1);
    }
    assertThat(connection.isOpen()).isTrue();
  }

  @Test
  void theNextHeadOnTheSameConnectionIsCountedAnew() {
    hear("GET / HTTP/1.1\r\n\r\n");
    say(WHOLE);
    pass(30);
    say(OVER);
    pass(30);
    assertThat(connection.isOpen()).as("between two requests").isTrue();
    hear("G");
    pass(9);
    hear("E");
    assertThat(connection.isOpen()).isTrue();
    pass(1);
    assertThat(connection.isOpen()).isFalse();
  }

  @Test
  void whatOthersSayAndAllThatComesIsPassedOn() {
    hear("GET");
    ByteBuf passed = connection.readInbound();
    assertThat(passed.toString(StandardCharsets.US_ASCII)).isEqualTo("GET");
    passed.release();
  }
}
