package org.standoff.rest.http;

import io.netty.buffer.ByteBuf;
import io.netty.buffer.Unpooled;
import io.netty.channel.ChannelDuplexHandler;
import io.netty.channel.ChannelHandlerContext;
import io.netty.channel.ChannelPromise;
import io.netty.channel.socket.DuplexChannel;
import io.netty.util.ReferenceCountUtil;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.standoff.rest.problem.ProblemMember;
import org.standoff.rest.problem.ProblemType;
import org.standoff.rest.problem.RawProblem;
import org.standoff.rest.problem.RequestId;
import org.standoff.rest.problem.Seconds;
import org.standoff.rest.problem.ToldMembers;

/**
 * Puts a problem in the place of what the framework says without one: when a head is too slow, too
 * long or can't be read, no request comes to be, and nothing that looks at requests sees it. It
 * stands at the very end of the way out, where answers are bytes, and knows from {@link
 * HeadTimeout}'s words whether they answer a request. Behind TLS of the service's own they can't be
 * told from others, and pass.
 */
final class HeadRefusal extends ChannelDuplexHandler {

  static final String NAME = "head-refusal";

  /** Who still sends would lose the answer if the connection were cut (RFC 9112, 9.6). */
  static final int LINGERS_S = 2;

  private static final int STATUS_LINE = 12;
  private static final Pattern REFUSAL = Pattern.compile("HTTP/1\\.[01] ([45]\\d\\d)");

  private final HeadLimits limits;
  private int inside;
  private boolean refused;
  private boolean lingering;

  HeadRefusal(HeadLimits limits) {
    this.limits = limits;
  }

  @Override
  public void userEventTriggered(ChannelHandlerContext connection, Object event) {
    if (event.equals(HeadTimeout.WHOLE)) {
      inside++;
    } else if (event.equals(HeadTimeout.OVER)) {
      inside--;
    }
    connection.fireUserEventTriggered(event);
  }

  @Override
  public void channelRead(ChannelHandlerContext connection, Object bytes) {
    if (refused) {
      ReferenceCountUtil.release(bytes);
    } else {
      connection.fireChannelRead(bytes);
    }
  }

  @Override
  public void write(ChannelHandlerContext connection, Object answer, ChannelPromise written) {
    if (refused) {
      ReferenceCountUtil.release(answer);
      written.setSuccess();
      return;
    }
    Matcher refusal = REFUSAL.matcher(inside == 0 ? begin(answer) : "");
    if (!refusal.matches()) {
      connection.write(answer, written);
      return;
    }
    refused = true;
    lingering = true;
    ReferenceCountUtil.release(answer);
    byte[] problem = problem(Integer.parseInt(refusal.group(1)));
    connection
        .writeAndFlush(Unpooled.wrappedBuffer(problem), written)
        .addListener(sent -> linger(connection));
  }

  @Override
  public void close(ChannelHandlerContext connection, ChannelPromise closed) {
    if (lingering) {
      connection.channel().closeFuture().addListener(over -> closed.trySuccess());
    } else {
      connection.close(closed);
    }
  }

  private void linger(ChannelHandlerContext connection) {
    if (connection.channel() instanceof DuplexChannel both) {
      both.shutdownOutput();
    }
    connection.executor().schedule(() -> end(connection), LINGERS_S, TimeUnit.SECONDS);
  }

  private void end(ChannelHandlerContext connection) {
    lingering = false;
    connection.close();
  }

  private static String begin(Object answer) {
    return answer instanceof ByteBuf bytes && bytes.readableBytes() >= STATUS_LINE
        ? bytes.toString(bytes.readerIndex(), STATUS_LINE, StandardCharsets.US_ASCII)
        : "";
  }

  private byte[] problem(int status) {
    ProblemType type = ProblemType.ofStatus(status);
    return switch (type) {
      case TOO_SLOW ->
          problem(
              type,
              "The head must be whole within %s s of its first byte."
                  .formatted(Seconds.of(limits.within()).toPlainString()),
              ToldMembers.of(ProblemMember.HEAD_WITHIN_S, Seconds.of(limits.within())));
      case ADDRESS_TOO_LONG ->
          problem(
              type,
              "The first line of a request may have at most %d bytes."
                  .formatted(limits.requestLineBytes()),
              ToldMembers.of(ProblemMember.MAX_REQUEST_LINE_BYTES, limits.requestLineBytes()));
      case HEADERS_TOO_LARGE ->
          problem(
              type,
              "The headers may have at most %d bytes together.".formatted(limits.headersBytes()),
              ToldMembers.of(ProblemMember.MAX_HEADERS_BYTES, limits.headersBytes()));
      case INVALID_REQUEST ->
          problem(type, "The address or the headers can't be read.", ToldMembers.NONE);
      default -> problem(type, type.meaning(), ToldMembers.NONE);
    };
  }

  private static byte[] problem(ProblemType type, String detail, ToldMembers members) {
    return RawProblem.http1(type, detail, members, RequestId.given(null));
  }
}
