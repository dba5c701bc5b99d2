package org.standoff.rest.http;

import io.vertx.ext.web.RoutingContext;
import org.jspecify.annotations.Nullable;

/**
 * The place of one request among those that are worked on. It is given back when neither the
 * connection nor a worker needs it any longer: a caller who hangs up leaves a worker behind that
 * goes on, and would make room for another such call otherwise.
 */
final class Place {

  private static final String KEY = Place.class.getName();

  private final Runnable giveBack;
  private int holders = 1;

  /** A place that the connection holds. */
  Place(Runnable giveBack) {
    this.giveBack = giveBack;
  }

  /** Takes the place for a request until that is answered, or its caller has gone. */
  void take(RoutingContext request) {
    request.put(KEY, this);
    request.addEndHandler(over -> letGo());
  }

  /** The place that a request has, if it needs one. */
  static @Nullable Place of(RoutingContext request) {
    return request.get(KEY);
  }

  /** Whether somebody else holds the place too now, who has to {@link #letGo()}. */
  synchronized boolean hold() {
    if (holders == 0) {
      return false;
    }
    holders++;
    return true;
  }

  synchronized void letGo() {
    holders--;
    if (holders == 0) {
      giveBack.run();
    }
  }
}
