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
  private static final long EVERY_S = 10;
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
          .description("Holds by their state, counted every " + EVERY_S + " s")
          .tag("state", state.spelt())
          .register(registry);
    }
    worker.scheduleWithFixedDelay(this::look, 1, EVERY_S, TimeUnit.SECONDS);
  }

  void end(@Observes ShutdownEvent stop) {
    worker.shutdownNow();
  }

  private double count(HoldState state) {
    Long count = counts.get(state);
    return count == null ? Double.NaN : count;
  }

  /** Counts anew; for tests, and by the clock. */
  void look() {
    try {
      counts = transactions.statements(HoldGauges::counted);
    } catch (DatabaseLost lost) {
      counts = Map.of();
    } catch (RuntimeException unexpected) {
      // an exception would end the counting for good
      LOG.error("Counting the holds failed", unexpected);
      counts = Map.of();
    }
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
