package org.standoff.rest.http;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.vertx.core.Context;
import io.vertx.core.Vertx;
import io.vertx.core.buffer.Buffer;
import io.vertx.core.http.HttpHeaders;
import io.vertx.core.http.HttpServerRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import java.time.Duration;
import java.util.function.Consumer;
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

  private static final int SHEETS_AT_ONCE = 2;

  private final Vertx vertx;
  private final Problems problems;
  private final Duration within;
  private final BodyRoom sheets = new BodyRoom((long) SHEETS_AT_ONCE * BodyLimit.SHEET_BYTES);

  /** Their own, or two sheets would shut everybody else out. */
  private final BodyRoom others;

  BodyIntake(
      Vertx vertx,
      Problems problems,
      LimitSettings settings,
      Admission admission,
      MeterRegistry metrics) {
    this.vertx = vertx;
    this.problems = problems;
    this.within = settings.bodyWithin();
    // as much for those that come in as all that are worked on can have
    this.others = new BodyRoom(2L * admission.most() * BodyLimit.BYTES);
    Gauge.builder("standoff.bodies.coming.in", () -> sheets.comingIn() + others.comingIn())
        .description("Bodies of requests that are not whole yet")
        .register(metrics);
    Gauge.builder("standoff.bodies.kept", () -> sheets.takenBytes() + others.takenBytes())
        .description("Bytes of bodies, of those that come in and of those that are worked on")
        .baseUnit("bytes")
        .register(metrics);
  }

  /**
   * Takes the body in and hands the request on; one that is too slow or too large, or finds no
   * room, is answered here.
   *
   * @param mostBytes how long the body may be, whatever length was declared
   * @param whole goes on with the request, and runs what it is given when nobody needs the body any
   *     more
   */
  void take(RoutingContext request, int mostBytes, Consumer<Runnable> whole) {
    Arrival arrival = new Arrival(request, mostBytes, whole);
    HttpServerRequest from = request.request();
    if (from.headers().contains(HttpHeaders.EXPECT, "100-continue", true)) {
      from.response().writeContinue();
    }
    from.handler(arrival::more).endHandler(end -> arrival.whole());
  }

  /** One body. It comes in on the event loop of its connection; whoever is last gives it up. */
  private final class Arrival {

    private final RoutingContext request;
    private final int mostBytes;
    private final Consumer<Runnable> whole;
    private final BodyRoom.Stay stay;
    private final long deadline;
    private Buffer body = Buffer.buffer();
    private boolean over;

    Arrival(RoutingContext request, int mostBytes, Consumer<Runnable> whole) {
      this.request = request;
      this.mostBytes = mostBytes;
      this.whole = whole;
      Context loop = vertx.getOrCreateContext();
      BodyRoom room = mostBytes > BodyLimit.BYTES ? sheets : others;
      this.stay = room.open(() -> loop.runOnContext(now -> refuse(this::sendNoRoom)));
      this.deadline =
          vertx.setTimer(Math.max(1, within.toMillis()), now -> refuse(this::sendTooSlow));
      request.addEndHandler(answered -> giveUp());
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
      ArrivedBody.keep(request, body);
      whole.accept(stay::leave);
    }

    private void refuse(Runnable send) {
      if (over) {
        return;
      }
      giveUp();
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
          "There is no room for this body now.",
          RetryAfter.OTHERS_ARE_ANSWERED.told());
    }

    /** Answered, or left by the caller, before it was whole. */
    private void giveUp() {
      if (!over) {
        over = true;
        body = Buffer.buffer();
        vertx.cancelTimer(deadline);
        stay.leave();
      }
    }
  }
}
