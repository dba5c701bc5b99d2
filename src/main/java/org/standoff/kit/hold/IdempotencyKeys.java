package org.standoff.kit.hold;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.standoff.kit.Sql;

/** Keeps, for 24 hours, what was answered to which key of which caller. */
final class IdempotencyKeys {

  private IdempotencyKeys() {}

  /**
   * The answer that was given before, if one was; if not, the key is this transaction's.
   *
   * @throws KeyBusy while another transaction has the key
   * @throws KeyReused where it came with another body
   */
  static Optional<Receipt> claim(Connection connection, String caller, Retry retry)
      throws SQLException {
    boolean ours =
        Sql.first(
                connection,
                "select pg_try_advisory_xact_lock(hashtextextended(?, 1)) as ours",
                row -> row.getBoolean("ours"),
                caller + "\n" + retry.key())
            .orElseThrow();
    if (!ours) {
      throw new KeyBusy();
    }
    // a statement of its own: it must see what the last owner of the lock committed
    Optional<Map.Entry<Boolean, Receipt>> before =
        Sql.first(
            connection,
            """
            select fingerprint, hold, answer from idempotency_key
            where caller = ? and key = ? and made_at > kit_now() - interval '24 hours'
            """,
            row ->
                Map.entry(
                    retry.isOf(row.getBytes("fingerprint")),
                    new Receipt(row.getObject("hold", UUID.class), row.getString("answer"))),
            caller,
            retry.key());
    if (before.isPresent() && !before.get().getKey()) {
      throw new KeyReused();
    }
    return before.map(Map.Entry::getValue);
  }

  /** Keeps the answer; one that is past its time gives way. */
  static Receipt keep(Connection connection, String caller, Retry retry, Hold hold, Instant now)
      throws SQLException {
    Receipt receipt = new Receipt(hold.id(), retry.writing().apply(hold));
    Sql.change(
        connection,
        """
        insert into idempotency_key (caller, key, fingerprint, hold, answer, made_at)
        values (?, ?, ?, ?, ?, ?)
        on conflict (caller, key) do update
        set fingerprint = excluded.fingerprint, hold = excluded.hold, answer = excluded.answer,
            made_at = excluded.made_at
        """,
        caller,
        retry.key(),
        retry.fingerprint(),
        receipt.hold(),
        receipt.answer(),
        now);
    return receipt;
  }
}
