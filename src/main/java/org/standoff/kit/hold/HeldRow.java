package org.standoff.kit.hold;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.OptionalLong;
import java.util.UUID;
import org.standoff.kit.Caller;
import org.standoff.kit.Precondition;
import org.standoff.kit.Sql;

/** A hold that is being changed: locked, visible to whoever changes it, and as they suppose. */
final class HeldRow {

  private HeldRow() {}

  /**
   * @throws HoldUnknown where the caller may not see it
   */
  static Hold lock(Connection connection, Caller caller, UUID id, Precondition supposed)
      throws SQLException {
    Hold hold = HoldRows.lock(connection, id).orElseThrow(HoldUnknown::new);
    if (hold.seenBy(caller).isEmpty()) {
      throw new HoldUnknown();
    }
    supposed.check(OptionalLong.of(hold.revision()));
    return hold;
  }

  /** Lets it stand otherwise from now on. */
  static void become(Connection connection, UUID id, HoldState state, Instant now)
      throws SQLException {
    Sql.change(
        connection,
        "update hold set state = ?, changed_at = ?, revision = revision + 1 where id = ?",
        state.spelt(),
        now,
        id);
  }

  /** How a hold stands of which something was collected: out until nothing is left to settle. */
  static HoldState collected(Connection connection, UUID id) throws SQLException {
    return Sql.first(
            connection,
            """
            select exists (
                select from hold_unit where hold = ? and occupies and in_at is null) as is_out
            """,
            row -> row.getBoolean("is_out") ? HoldState.OUT : HoldState.RETURNED,
            id)
        .orElseThrow();
  }

  /** The same hold as the caller may see it now. */
  static Hold seen(Connection connection, Caller caller, UUID id) throws SQLException {
    return HoldRows.find(connection, id)
        .flatMap(hold -> hold.seenBy(caller))
        .orElseThrow(HoldUnknown::new);
  }

  /**
   * @throws StepRefused where a hold in this state doesn't take the step
   */
  static void mustTake(Hold hold, HoldStep step, String detail) {
    if (!hold.state().steps().contains(step)) {
      throw new StepRefused(hold.state(), detail);
    }
  }
}
