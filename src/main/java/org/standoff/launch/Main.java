package org.standoff.launch;

import io.quarkus.runtime.Quarkus;
import io.quarkus.runtime.annotations.QuarkusMain;
import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.util.List;
import org.jboss.logging.Logger;

/**
 * Starts the embedded PostgreSQL unless a server was given, and the service beside it. The two
 * start at the same time: calculations answer while the database is still coming, and go on without
 * it.
 */
@QuarkusMain
public final class Main {

  private static final Logger LOG = Logger.getLogger(Main.class);

  /** Lets what is named as a service see each connection when it is made: rest.http.HeadGuards. */
  private static final String NETTY_EXTENSIONS = "io.netty.bootstrap.extensions";

  public static void main(String... args) throws IOException {
    if (args.length > 0 && args[0].equals(TokenCommand.NAME)) {
      System.exit(TokenCommand.run(List.of(args).subList(1, args.length), System.out, System.err));
    }
    StartSettings settings = StartSettings.read();
    if (settings.tokenKeys().isEmpty()) {
      takeOwnKeys(settings.dataFolder());
    }
    if (settings.jdbcUrl().isEmpty()) {
      int port = freePort();
      EmbeddedDatabase.settings(port).forEach(System::setProperty);
      Thread starter =
          new Thread(() -> keepDatabase(settings.dataFolder(), port), "embedded-postgresql");
      starter.setDaemon(true);
      starter.start();
    }
    System.setProperty(NETTY_EXTENSIONS, "serviceload");
    Quarkus.run(args);
  }

  /** Without them every token is refused, and what needs no token goes on. */
  private static void takeOwnKeys(Path folder) {
    try {
      String file = TokenKeys.in(folder).publicKeyFile().toUri().toString();
      System.setProperty(StartSettings.TOKEN_KEYS, file);
    } catch (KeysUnavailable unavailable) {
      LOG.error(unavailable.getMessage());
    }
  }

  private static void keepDatabase(Path folder, int port) {
    try {
      new KeptDatabase(folder, port).keep();
    } catch (InterruptedException ended) {
      Thread.currentThread().interrupt();
    }
  }

  /**
   * The address must be known to the data source before the server that will listen there is up.
   */
  private static int freePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }
}
