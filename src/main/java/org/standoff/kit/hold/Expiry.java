package org.standoff.kit.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import org.jboss.logging.Logger;
import org.standoff.kit.DatabaseLost;
import org.standoff.kit.Model;
import org.standoff.kit.Sql;
import org.standoff.kit.StatementFailed;
import org.standoff.kit.Transactions;

/**
 * Lets fall what is due, by the clock of the database, and gives what falls free to those who wait.
 * It has a transaction of its own, so that a booking that fails afterwards doesn't undo it.
 */
@ApplicationScoped
public class Expiry {

  private static final Logger LOG = Logger.getLogger(Expiry.class);

  /** Whether anything is due, as an expression. */
  static final String IS_DUE =
      """
      (exists (select from hold
          where state in ('waiting', 'tentative') and expires_at <= kit_now())
       or exists (select from idempotency_key where made_at <= kit_now() - interval '24 hours'))
      """;

  /** Whether nobody else does this now; waits a second for locks, by a setting that comes last. */
  private static final String ALONE_AND_SOON =
      """
      set_config('lock_timeout', '1s', true),
      pg_try_advisory_xact_lock(hashtextextended('what is due', 0))
      """;

  /** Who lets holds fall, in the audit. */
  private static final String CLOCK = "clock";

  private final Attempts attempts;
  private final SecondHolds secondHolds;

  Expiry(Attempts attempts, SecondHolds secondHolds) {
    this.attempts = attempts;
    this.secondHolds = secondHolds;
  }

  /** The same where something is due; else it costs a look. For those who read. */
  public void settleIfDue() {
    if (isDue()) {
      settle();
    }
  }

  /**
   * The same for those who ask what is free, many at once, and count what is due as fallen anyway:
   * they leave it to one of them, who does not wait long for what others have locked; and a server
   * that takes no change still tells what is free.
   */
  public void settleUnlessBusy() {
    if (!isDue()) {
      return;
    }
    try {
      attempts.run(
          connection -> {
            boolean alone = sign(connection, ALONE_AND_SOON);
            if (alone) {
              letFall(connection);
            }
            return alone;
          });
    } catch (DatabaseLost | StatementFailed busy) {
      LOG.debug("What is due could not fall now", busy);
    }
  }

  /** Lets fall what is due now. */
  void settle() {
    attempts.run(
        connection -> {
          boolean signed = sign(connection, "true");
          letFall(connection);
          return signed;
        });
  }

  private boolean isDue() {
    return attempts.run(
        connection ->
            Sql.first(connection, "select " + IS_DUE + " as due", row -> row.getBoolean("due"))
                .orElseThrow());
  }

  private static boolean sign(Connection connection, String alone) throws SQLException {
    return Sql.first(
            connection,
            "select %s, %s as alone".formatted(Transactions.SIGN, alone),
            row -> row.getBoolean("alone"),
            CLOCK)
        .orElseThrow();
  }

  private void letFall(Connection connection) throws SQLException {
    secondHolds.moveUp(connection, expire(connection, HoldState.TENTATIVE));
    // only now: whoever has locked a waiting hold waits for no model any more
    expire(connection, HoldState.WAITING);
    Sql.change(
        connection,
        """
        delete from idempotency_key where (caller, key) in (
            select caller, key from idempotency_key
            where made_at <= kit_now() - interval '24 hours'
            for update skip locked)
        """);
  }

  /** The models of which units fell free. */
  private static List<Model> expire(Connection connection, HoldState state) throws SQLException {
    return Sql.list(
        connection,
        "select house, microphone from expire_due(?)",
        row -> new Model(row.getString("house"), row.getString("microphone")),
        state.spelt());
  }
}
