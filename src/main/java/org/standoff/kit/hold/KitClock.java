package org.standoff.kit.hold;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import org.standoff.kit.Sql;

/** The clock of the database, which is everybody's. */
final class KitClock {

  private KitClock() {}

  /** The moment of this statement, not of the transaction's begin. */
  static Instant now(Connection connection) throws SQLException {
    return Sql.first(connection, "select kit_now() as now", row -> Sql.instant(row, "now"))
        .orElseThrow();
  }
}
