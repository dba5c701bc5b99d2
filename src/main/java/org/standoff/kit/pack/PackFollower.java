package org.standoff.kit.pack;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import jakarta.inject.Inject;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import javax.sql.DataSource;
import org.jboss.logging.Logger;
import org.postgresql.PGConnection;
import org.standoff.catalogue.load.LiveCatalogue;
import org.standoff.kit.SchemaMigration;

/**
 * Brings into this instance's catalogue what is published on another: PostgreSQL calls (LISTEN),
 * and because a call can be lost with its connection, there is a look every few seconds besides.
 */
@ApplicationScoped
public class PackFollower {

  private static final Logger LOG = Logger.getLogger(PackFollower.class);
  private static final Duration LOOK_EVERY = Duration.ofSeconds(5);
  private static final long RETRY_MS = 1_000;

  private final DataSource dataSource;
  private final SchemaMigration migration;
  private final PublishedPacks packs;
  private final LiveCatalogue live;
  private final int lookEveryMs;
  private volatile boolean stopped;
  private final ScheduledExecutorService worker =
      Executors.newSingleThreadScheduledExecutor(
          task -> {
            Thread thread = new Thread(task, "pack-follower");
            thread.setDaemon(true);
            return thread;
          });

  @Inject
  PackFollower(
      DataSource dataSource, SchemaMigration migration, PublishedPacks packs, LiveCatalogue live) {
    this(dataSource, migration, packs, live, LOOK_EVERY);
  }

  PackFollower(
      DataSource dataSource,
      SchemaMigration migration,
      PublishedPacks packs,
      LiveCatalogue live,
      Duration lookEvery) {
    this.dataSource = dataSource;
    this.migration = migration;
    this.packs = packs;
    this.live = live;
    this.lookEveryMs = (int) lookEvery.toMillis();
  }

  void begin(@Observes StartupEvent start) {
    worker.scheduleWithFixedDelay(this::attempt, 0, RETRY_MS, TimeUnit.MILLISECONDS);
  }

  void end(@Observes ShutdownEvent stop) {
    stopped = true;
    worker.shutdownNow();
  }

  private void attempt() {
    if (!migration.isDone()) {
      return;
    }
    try {
      follow();
    } catch (SQLException lost) {
      // health tells of a lost database; the packs stay as they are until it is back
      LOG.debug("Following published packs broke off", lost);
    } catch (RuntimeException unexpected) {
      // an exception would end the attempts for good
      LOG.error("Following published packs failed; they stay as they are", unexpected);
    }
  }

  /** Follows until the service stops or the connection is lost. */
  private void follow() throws SQLException {
    try (Connection connection = dataSource.getConnection();
        Statement statement = connection.createStatement()) {
      statement.execute("listen pack_changed");
      PGConnection calls = connection.unwrap(PGConnection.class);
      try {
        while (!stopped) {
          look(connection);
          calls.getNotifications(lookEveryMs);
        }
      } finally {
        // it goes back to the pool, unless the pool ends too
        if (!stopped) {
          statement.execute("unlisten pack_changed");
        }
      }
    }
  }

  private void look(Connection connection) throws SQLException {
    if (packs.refresh(connection)) {
      live.reload();
      LOG.infof("Catalogue %s, with packs as houses published them", live.get().revision());
    }
  }
}
