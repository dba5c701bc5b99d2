package org.standoff.kit.hold;

import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.quarkus.runtime.ShutdownEvent;
import io.quarkus.runtime.StartupEvent;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.enterprise.event.Observes;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.EnumMap;
import java.util.Map;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import org.jboss.logging.Logger;
import org.standoff.kit.DatabaseLost;
import org.standoff.kit.Transactions;

/**
 * Counts holds by their state, for those who watch the service. Counted now and then, so that
 * whoever reads the metrics never waits for the database; NaN while it is not there.
 */
@ApplicationScoped
public class HoldGauges {

  private static final Logger LOG = Logger.getLogger(HoldGauges.class);
  private static final Duration SOONEST = Duration.ofSeconds(10);

  /** One part in so many of the time goes to counting, at most. */
  private static final int SHARE = 100;

  private static final String COUNTS = "select state, count(*) from hold group by state";

  private final Transactions transactions;
  private final ScheduledExecutorService worker =
      Executors.newSingleThreadScheduledExecutor(
          task -> {
            Thread thread = new Thread(task, "hold-counts");
            thread.setDaemon(true);
            return thread;
          });

  /** Empty while nothing is known. */
  private volatile Map<HoldState, Long> counts = Map.of();

  HoldGauges(Transactions transactions) {
    this.transactions = transactions;
  }

  void register(@Observes StartupEvent start, MeterRegistry registry) {
    for (HoldState state : HoldState.values()) {
      Gauge.builder("standoff.holds", () -> count(state))
          .description(
              "Holds by their state, counted anew after %d s, or later where counting takes long"
                  .formatted(SOONEST.toSeconds()))
          .tag("state", state.spelt())
          .register(registry);
    }
    worker.schedule(this::lookAndRest, 1, TimeUnit.SECONDS);
  }

  private void lookAndRest() {
    worker.schedule(this::lookAndRest, look().toMillis(), TimeUnit.MILLISECONDS);
  }

  /** Millions of past holds must not keep the database busy with being counted. */
  static Duration restAfter(Duration counting) {
    Duration fair = counting.multipliedBy(SHARE);
    return fair.compareTo(SOONEST) > 0 ? fair : SOONEST;
  }

  void end(@Observes ShutdownEvent stop) {
    worker.shutdownNow();
  }

  private double count(HoldState state) {
    Long count = counts.get(state);
    return count == null ? Double.NaN : count;
  }

  /** Counts anew; for tests, and by the clock. Returns how long to leave it at that. */
  Duration look() {
    try {
      return restAfter(transactions.statements(this::counting));
    } catch (DatabaseLost lost) {
      counts = Map.of();
    } catch (RuntimeException unexpected) {
      // an exception would end the counting for good
      LOG.error("Counting the holds failed", unexpected);
      counts = Map.of();
    }
    return SOONEST;
  }

  /** How long the database took; the wait for a connection is none of it. */
  private Duration counting(Connection connection) throws SQLException {
    long begun = System.nanoTime();
    counts = counted(connection);
    return Duration.ofNanos(System.nanoTime() - begun);
  }

  private static Map<HoldState, Long> counted(Connection connection) throws SQLException {
    Map<HoldState, Long> counted = new EnumMap<>(HoldState.class);
    for (HoldState state : HoldState.values()) {
      counted.put(state, 0L);
    }
    try (Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(COUNTS)) {
      while (rows.next()) {
        counted.put(HoldState.ofSpelling(rows.getString(1)), rows.getLong(2));
      }
    }
    return counted;
  }
}
