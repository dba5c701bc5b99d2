package org.standoff.kit.house;

import java.sql.Connection;
import java.sql.SQLException;

/** Wants to know when a house lends on other terms than before. */
public interface ChangedTerms {

  /**
   * Called in the transaction that changes them, after it did; the row of the house is locked.
   *
   * @param connection of that transaction
   * @param house its id
   */
  void changed(Connection connection, String house) throws SQLException;
}
