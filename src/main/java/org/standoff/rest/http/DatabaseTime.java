package org.standoff.rest.http;

import io.quarkus.arc.Arc;
import io.quarkus.arc.ArcContainer;
import io.quarkus.vertx.http.runtime.CurrentVertxRequest;
import io.vertx.ext.web.RoutingContext;
import jakarta.enterprise.context.ApplicationScoped;
import org.standoff.kit.TransactionTimes;

/** Keeps with each request how long its work was in transactions. */
@ApplicationScoped
class DatabaseTime implements TransactionTimes {
  private static final String SPENT = DatabaseTime.class.getName();

  private final CurrentVertxRequest current;

  DatabaseTime(CurrentVertxRequest current) {
    this.current = current;
  }

  @Override
  public void spent(long nanos) {
    ArcContainer container = Arc.container();
    // what the service does by itself has no request, and goes on while it ends
    if (container != null && container.requestContext().isActive()) {
      RoutingContext request = current.getCurrent();
      if (request != null) {
        request.put(SPENT, of(request) + nanos);
      }
    }
  }

  /** In nanoseconds; 0 where the database was not asked. */
  static long of(RoutingContext request) {
    Long spent = request.get(SPENT);
    return spent == null ? 0 : spent;
  }
}
