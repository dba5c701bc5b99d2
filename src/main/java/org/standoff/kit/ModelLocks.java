package org.standoff.kit;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Collection;

/**
 * Lets one transaction at a time promise, free, add or retire units of a model. It is no safeguard:
 * the constraint of the table is. It keeps bookings that race for the same units from failing each
 * other, and keeps them in one order, so that they don't wait for each other in a circle.
 */
public final class ModelLocks {

  private ModelLocks() {}

  /**
   * Waits until the models are this transaction's, and keeps them to its end. Rows of holds that
   * have units are locked before, never after; rows of those that wait in line are locked after,
   * and whoever locked one asks for no more models.
   */
  public static void take(Connection connection, Collection<Model> models) throws SQLException {
    if (models.isEmpty()) {
      return;
    }
    Sql.list(
        connection,
        """
        select pg_advisory_xact_lock(key)
        from (select distinct hashtextextended(name, 0) as key
              from unnest(?) as name order by key) as wanted
        """,
        row -> true,
        (Object)
            models.stream()
                .map(model -> model.house() + " " + model.microphone())
                .toArray(String[]::new));
  }
}
