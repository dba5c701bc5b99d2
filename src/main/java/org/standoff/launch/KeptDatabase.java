package org.standoff.launch;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import org.jboss.logging.Logger;
import org.jspecify.annotations.Nullable;

/**
 * The embedded PostgreSQL for as long as the service runs. One that did not start, or that ended,
 * because somebody killed it or its disk was full, is started again on the same port, sooner at
 * first and then every few seconds, until what was wrong is mended.
 */
final class KeptDatabase implements AutoCloseable {

  private static final Logger LOG = Logger.getLogger(KeptDatabase.class);

  private static final Duration SOONEST = Duration.ofMillis(500);
  private static final Duration LATEST = Duration.ofSeconds(8);

  /** A first start unpacks and prepares; there is no point in doing that all the time. */
  private static final Duration FIRST_START_AGAIN = Duration.ofSeconds(20);

  private final Path folder;
  private final int port;
  private final CountDownLatch ending = new CountDownLatch(1);
  private volatile @Nullable EmbeddedDatabase running;

  KeptDatabase(Path folder, int port) {
    this.folder = folder;
    this.port = port;
  }

  /** Runs it until {@link #close()} or the end of the process. */
  void keep() throws InterruptedException {
    // the server ends with the process; that is no reason to start it again
    Runtime.getRuntime().addShutdownHook(new Thread(ending::countDown));
    Optional<ServerProcess> started = start(Logger.Level.ERROR);
    while (started.isEmpty()) {
      if (pause(FIRST_START_AGAIN)) {
        return;
      }
      started = start(Logger.Level.DEBUG);
    }
    watch(started.get());
  }

  /** Whether it was up once, so that it is run again when it ends. */
  boolean wasUp() {
    return running != null;
  }

  private Optional<ServerProcess> start(Logger.Level tellAt) {
    try {
      running = EmbeddedDatabase.inFolder(folder, port);
      return Optional.of(EmbeddedDatabase.processIn(folder));
    } catch (IOException | DatabaseUnavailable unavailable) {
      LOG.log(tellAt, unavailable.getMessage());
      LOG.debug("The embedded PostgreSQL did not start", unavailable);
      return Optional.empty();
    }
  }

  private void watch(ServerProcess server) throws InterruptedException {
    Duration pause = SOONEST;
    long begun = System.nanoTime();
    while (!pause(server.isRunning() ? SOONEST : pause)) {
      if (server.isRunning()) {
        continue;
      }
      if (System.nanoTime() - begun > LATEST.toNanos()) {
        pause = SOONEST;
        LOG.warn(
            "The embedded PostgreSQL ended and is started again, until it stays: look whether the"
                + " data folder has room. Calculations answer meanwhile.");
      }
      pause = pause.compareTo(LATEST) < 0 ? pause.multipliedBy(2) : LATEST;
      begun = System.nanoTime();
      runAgain(server);
    }
  }

  private static void runAgain(ServerProcess server) throws InterruptedException {
    try {
      server.runAgain();
    } catch (IOException | RuntimeException failure) {
      LOG.debug("The embedded PostgreSQL did not start again", failure);
    }
  }

  /** True where the service ends meanwhile. */
  private boolean pause(Duration time) throws InterruptedException {
    return ending.await(time.toMillis(), TimeUnit.MILLISECONDS);
  }

  @Override
  public void close() throws IOException {
    ending.countDown();
    EmbeddedDatabase database = running;
    if (database != null) {
      database.close();
    }
  }
}
