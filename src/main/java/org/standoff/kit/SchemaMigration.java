package org.standoff.kit;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.util.Objects;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import org.flywaydb.core.Flyway;
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
  private ScheduledFuture<?> attempts;
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
    attempts = worker.scheduleWithFixedDelay(this::attempt, 0, RETRY_MS, TimeUnit.MILLISECONDS);
  }

  void end(@Observes ShutdownEvent stop) {
    attempts.cancel(true);
    worker.shutdownNow();
  }

  private void attempt() {
    try {
      flyway.migrate();
    } catch (RuntimeException failure) {
      // whatever it was, the next attempt may find it mended
      if (told.compareAndSet(false, true)) {
        LOG.warnf(
            "The tables are not ready: %s. Calculations go on without them; attempts go on too.",
            Objects.requireNonNullElse(failure.getMessage(), "no reason given")
                .lines()
                .findFirst()
                .orElse(""));
        LOG.debug("First failed migration", failure);
      }
      return;
    }
    done.set(true);
    LOG.info("The database is there and its tables are up to date");
    worker.shutdown();
  }
}
