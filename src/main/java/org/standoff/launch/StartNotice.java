package org.standoff.launch;

import io.quarkus.vertx.http.HttpServer;
import io.quarkus.vertx.http.HttpServerStart;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.ObservesAsync;
import org.jboss.logging.Logger;

/** Tells on the log where the service answers, and one call to try. */
@ApplicationScoped
public class StartNotice {

  /** A question that the shipped catalogue answers. */
  public static final String TRY_PATH =
      "/v1/settings?source=core/snare&placement=top&microphone=core/ldc-multi-1"
          + "&preamp=core/preamp-16&distance_m=0.05";

  private static final Logger LOG = Logger.getLogger(StartNotice.class);

  private final HttpServer server;

  StartNotice(HttpServer server) {
    this.server = server;
  }

  void listening(@ObservesAsync HttpServerStart start) {
    String address = "http://" + start.options().getHost() + ":" + server.getPort();
    LOG.infof("Standoff answers at %s", address);
    LOG.infof("Try: curl '%s%s'", address, TRY_PATH);
  }
}
