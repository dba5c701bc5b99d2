package org.standoff.kit.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import org.standoff.kit.Model;
import org.standoff.kit.Sql;
import org.standoff.kit.Transactions;

/**
 * Lets fall what is due, by the clock of the database, and gives what falls free to those who wait.
 * It has a transaction of its own, so that a booking that fails afterwards doesn't undo it.
 */
@ApplicationScoped
public class Expiry {

  /** Whether anything is due, as an expression. */
  static final String IS_DUE =
      """
      (exists (select from hold
          where state in ('waiting', 'tentative') and expires_at <= kit_now())
       or exists (select from idempotency_key where made_at <= kit_now() - interval '24 hours'))
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
    boolean due =
        attempts.run(
            connection ->
                Sql.first(connection, "select " + IS_DUE + " as due", row -> row.getBoolean("due"))
                    .orElseThrow());
    if (due) {
      settle();
    }
  }

  /** Lets fall what is due now. */
  void settle() {
    attempts.run(
        connection -> {
          Sql.list(connection, "select " + Transactions.SIGN, row -> true, CLOCK);
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
          return true;
        });
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
