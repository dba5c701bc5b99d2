package org.standoff.kit;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jboss.logging.Logger;

/**
 * Brings the tables up to date as soon as the server answers, however late that is, so that neither
 * the start nor a calculation waits for it.
 */
@ApplicationScoped
public class SchemaMigration {

  private static final Logger LOG = Logger.getLogger(SchemaMigration.class);
  private static final long RETRY_MS = 500;

  private final Flyway flyway;
  private final AtomicBoolean done = new AtomicBoolean();
  private final AtomicBoolean told = new AtomicBoolean();
  private final ScheduledExecutorService worker =
      Executors.newSingleThreadScheduledExecutor(
          task -> {
            Thread thread = new Thread(task, "schema-migration");
            thread.setDaemon(true);
            return thread;
          });

  SchemaMigration(Flyway flyway) {
    this.flyway = flyway;
  }

  /** Whether the tables are as this version wants them. */
  public boolean isDone() {
    return done.get();
  }

  void begin(@Observes StartupEvent start) {
    worker.scheduleWithFixedDelay(this::attempt, 0, RETRY_MS, TimeUnit.MILLISECONDS);
  }

  void end(@Observes ShutdownEvent stop) {
    worker.shutdownNow();
  }

  private void attempt() {
    try {
      flyway.migrate();
    } catch (FlywayException failure) {
      if (told.compareAndSet(false, true)) {
        LOG.warn(
            "The database does not answer yet. Calculations go on without it; the tables are made"
                + " ready when it comes.");
        LOG.debug("First failed migration", failure);
      }
      return;
    }
    done.set(true);
    LOG.info("The database is there and its tables are up to date");
    worker.shutdown();
  }
}
