package org.standoff.kit.hold;

import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.time.Duration;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jboss.logging.Logger;
import org.standoff.kit.DatabaseLost;

/**
 * Lets fall what is due although nobody asks: a hold that waits would else fall when its period
 * begins, hours after the units that it waits for fell free.
 */
@ApplicationScoped
public class DueHolds {

  private static final Logger LOG = Logger.getLogger(DueHolds.class);
  private static final Duration LOOK_EVERY = Duration.ofSeconds(5);

  private final Expiry expiry;
  private final ScheduledExecutorService worker =
      Executors.newSingleThreadScheduledExecutor(
          task -> {
            Thread thread = new Thread(task, "due-holds");
            thread.setDaemon(true);
            return thread;
          });

  DueHolds(Expiry expiry) {
    this.expiry = expiry;
  }

  void begin(@Observes StartupEvent start) {
    worker.scheduleWithFixedDelay(
        this::look, LOOK_EVERY.toMillis(), LOOK_EVERY.toMillis(), TimeUnit.MILLISECONDS);
  }

  void end(@Observes ShutdownEvent stop) {
    worker.shutdownNow();
  }

  private void look() {
    try {
      expiry.settleIfDue();
    } catch (DatabaseLost lost) {
      // health tells of it; what is due falls once the database is back
      LOG.debug("What is due could not fall", lost);
    } catch (RuntimeException | Error unexpected) {
      // whatever got out of here would end the looking for good
      LOG.error("Letting fall what is due failed", unexpected);
    }
  }
}
