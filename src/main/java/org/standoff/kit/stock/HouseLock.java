package org.standoff.kit.stock;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Optional;
import org.standoff.kit.Sql;
import org.standoff.kit.house.UnknownHouse;

/** Keeps others from changing the units of a house meanwhile; bookings are not kept. */
final class HouseLock {

  private HouseLock() {}

  /**
   * Takes the lock until the transaction ends.
   *
   * @return how often the units of the house have changed
   */
  static long take(Connection connection, String house) throws SQLException {
    return Sql.first(
            connection,
            "select stock_revision from house where id = ? for no key update",
            row -> row.getLong("stock_revision"),
            house)
        .orElseThrow(() -> new UnknownHouse(house, Optional.empty()));
  }

  /** Counts one more change of the units. */
  static void count(Connection connection, String house) throws SQLException {
    Sql.change(
        connection, "update house set stock_revision = stock_revision + 1 where id = ?", house);
  }
}
