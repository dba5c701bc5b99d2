package org.standoff.kit.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Optional;
import org.standoff.kit.Sql;
import org.standoff.kit.Transactions;

/**
 * Every change of holds goes through here: what is due falls first, then the change has a
 * transaction of its own, with the name of who makes it for the audit and one clock reading.
 */
@ApplicationScoped
class Ledger {

  private static final String BEGIN =
      "select %s, kit_now() as now, %s as due".formatted(Transactions.SIGN, Expiry.IS_DUE);

  private final Attempts attempts;
  private final Expiry expiry;

  Ledger(Attempts attempts, Expiry expiry) {
    this.attempts = attempts;
    this.expiry = expiry;
  }

  /** What is done in a transaction. */
  @FunctionalInterface
  interface Work<T> {
    T run(Connection connection, Instant now) throws SQLException;
  }

  private record Start(Instant now, boolean due) {}

  /** Makes a change; what the work throws takes all of it back, but not what fell before. */
  <T> T change(String actor, Work<T> work) {
    Optional<T> done =
        attempts.run(
            connection -> {
              Start start = start(connection, actor);
              return start.due()
                  ? Optional.<T>empty()
                  : Optional.of(work.run(connection, start.now()));
            });
    if (done.isPresent()) {
      return done.get();
    }
    expiry.settle();
    return attempts.run(connection -> work.run(connection, start(connection, actor).now()));
  }

  private static Start start(Connection connection, String actor) throws SQLException {
    return Sql.first(
            connection,
            BEGIN,
            row -> new Start(Sql.instant(row, "now"), row.getBoolean("due")),
            actor)
        .orElseThrow();
  }
}
