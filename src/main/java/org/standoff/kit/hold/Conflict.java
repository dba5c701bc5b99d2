package org.standoff.kit.hold;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import org.standoff.kit.Sql;

/**
 * A unit that two holds want, or will.
 *
 * @param house of the unit
 * @param serial of the unit
 * @param from when the other hold has it
 * @param to until when
 */
public record Conflict(String house, String serial, Instant from, Instant to) {

  static Conflict read(ResultSet row) throws SQLException {
    return new Conflict(
        row.getString("house"),
        row.getString("serial"),
        Sql.instant(row, "busy_from"),
        Sql.instant(row, "busy_to"));
  }
}
