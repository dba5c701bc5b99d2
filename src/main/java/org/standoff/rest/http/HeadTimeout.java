package org.standoff.rest.http;

import io.netty.buffer.Unpooled;
import io.netty.channel.ChannelFutureListener;
import io.netty.channel.ChannelHandlerContext;
import io.netty.channel.ChannelInboundHandlerAdapter;
import io.netty.channel.ChannelPipeline;
import io.netty.handler.ssl.SslHandler;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.core.net.impl.ConnectionBase;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;

/**
 * Closes a connection on which the head of a request does not come to its end in time. A time-out
 * between two bytes is not enough: a byte every second would hold the connection for hours. It
 * stands before everything else on a connection and only counts; what comes is read by others, who
 * say when a head was whole and when its request was over.
 */
final class HeadTimeout extends ChannelInboundHandlerAdapter {

  static final String NAME = "head-timeout";

  /** {@link HeadRefusal} says it at length. */
  private static final String ANSWER =
      "HTTP/1.1 408 Request Timeout\r\nContent-Length: 0\r\nConnection: close\r\n\r\n";

  /** What is said about a connection; where classes are loaded more than once, words are not. */
  static final String WHOLE = "standoff-head-whole";

  static final String OVER = "standoff-request-over";

  private final Duration within;
  private int inside;
  private @Nullable Future<?> deadline;

  HeadTimeout(Duration within) {
    this.within = within;
  }

  /** The head of a request is there; until it is over, what comes is no head. */
  static void whole(HttpServerRequest request) {
    say(request, WHOLE);
  }

  /** The request was answered; what comes next is the head of another. */
  static void over(HttpServerRequest request) {
    say(request, OVER);
  }

  private static void say(HttpServerRequest request, String word) {
    if (request.connection() instanceof ConnectionBase connection) {
      ChannelPipeline pipeline = connection.channel().pipeline();
      if (pipeline.context(NAME) != null) {
        pipeline.fireUserEventTriggered(word);
      }
    }
  }

  @Override
  public void channelRead(ChannelHandlerContext connection, Object bytes) {
    if (inside == 0 && deadline == null) {
      deadline =
          connection
              .executor()
              .schedule(() -> end(connection), within.toMillis(), TimeUnit.MILLISECONDS);
    }
    connection.fireChannelRead(bytes);
  }

  @Override
  public void userEventTriggered(ChannelHandlerContext connection, Object event) {
    if (event.equals(WHOLE)) {
      inside++;
      stopCounting();
    } else if (event.equals(OVER)) {
      inside--;
    } else {
      connection.fireUserEventTriggered(event);
    }
  }

  @Override
  public void channelInactive(ChannelHandlerContext connection) {
    stopCounting();
    connection.fireChannelInactive();
  }

  private void stopCounting() {
    if (deadline != null) {
      deadline.cancel(false);
      deadline = null;
    }
  }

  private static void end(ChannelHandlerContext connection) {
    if (connection.pipeline().get(SslHandler.class) != null) {
      // words in the clear would be no words there
      connection.close();
      return;
    }
    connection
        .writeAndFlush(Unpooled.copiedBuffer(ANSWER, StandardCharsets.US_ASCII))
        .addListener(ChannelFutureListener.CLOSE);
  }
}
