package org.standoff.rest.http;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.vertx.core.Context;
import io.vertx.core.Vertx;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import io.vertx.ext.web.impl.RoutingContextInternal;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import org.standoff.rest.problem.BodyTooLarge;
import org.standoff.rest.problem.BodyTooSlow;
import org.standoff.rest.problem.ProblemType;
import org.standoff.rest.problem.Problems;
import org.standoff.rest.problem.RetryAfter;

/**
 * Takes a body in, whole, before anybody works on its request: one that stalls or drips then holds
 * up no worker and none of the places that {@link Admission} has to give, only a connection and
 * what it has sent.
 */
@ApplicationScoped
class BodyIntake {

  /** Two sheets of the greatest length; all other bodies are small. */
  private static final long ROOM_BYTES = 2L * BodyLimit.SHEET_BYTES;

  private final Vertx vertx;
  private final Problems problems;
  private final Duration within;
  private final BodyRoom room = new BodyRoom(ROOM_BYTES);

  BodyIntake(Vertx vertx, Problems problems, LimitSettings settings, MeterRegistry metrics) {
    this.vertx = vertx;
    this.problems = problems;
    this.within = settings.bodyWithin();
    Gauge.builder("standoff.bodies.coming.in", room, BodyRoom::comingIn)
        .description("Bodies of requests that are not whole yet")
        .register(metrics);
    Gauge.builder("standoff.bodies.kept", room, BodyRoom::takenBytes)
        .description("Bytes of bodies, of those that come in and of those that are worked on")
        .baseUnit("bytes")
        .register(metrics);
  }

  /**
   * Takes the body in and hands the request on; one that is too slow or too large, or finds no
   * room, is answered here.
   *
   * @param mostBytes how long the body may be, whatever length was declared
   */
  void take(RoutingContext request, int mostBytes, Runnable whole) {
    Arrival arrival = new Arrival(request, mostBytes, whole);
    HttpServerRequest from = request.request();
    if (from.headers().contains(HttpHeaders.EXPECT, "100-continue", true)) {
      from.response().writeContinue();
    }
    from.handler(arrival::more).endHandler(end -> arrival.whole());
  }

  /** One body; everything happens on the event loop of its connection. */
  private final class Arrival {

    private final RoutingContext request;
    private final int mostBytes;
    private final Runnable whole;
    private final BodyRoom.Stay stay;
    private final long deadline;
    private Buffer body = Buffer.buffer();
    private boolean over;

    Arrival(RoutingContext request, int mostBytes, Runnable whole) {
      this.request = request;
      this.mostBytes = mostBytes;
      this.whole = whole;
      Context loop = vertx.getOrCreateContext();
      this.stay = room.open(() -> loop.runOnContext(now -> refuse(this::sendNoRoom)));
      this.deadline = vertx.setTimer(within.toMillis(), now -> refuse(this::sendTooSlow));
      request.addEndHandler(answered -> leave());
    }

    void more(Buffer bytes) {
      if (over) {
        return;
      }
      if (body.length() + bytes.length() > mostBytes) {
        refuse(() -> problems.send(request, new BodyTooLarge(mostBytes)));
      } else if (stay.take(bytes.length())) {
        body.appendBuffer(bytes);
      }
    }

    void whole() {
      if (over || !stay.whole()) {
        return;
      }
      over = true;
      vertx.cancelTimer(deadline);
      ((RoutingContextInternal) request).setBody(body);
      whole.run();
    }

    private void refuse(Runnable send) {
      if (over) {
        return;
      }
      over = true;
      body = Buffer.buffer();
      LastOfConnection.mark(request);
      send.run();
    }

    private void sendTooSlow() {
      problems.send(request, new BodyTooSlow(within));
    }

    private void sendNoRoom() {
      problems.send(
          request,
          ProblemType.OVERLOADED,
          "There is no more room for bodies that come in slowly.",
          RetryAfter.OTHERS_ARE_ANSWERED.told());
    }

    private void leave() {
      over = true;
      vertx.cancelTimer(deadline);
      stay.leave();
    }
  }
}
