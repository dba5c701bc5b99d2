package org.standoff.kit.stock;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Collection;
import org.standoff.kit.Model;

/** Wants to know when units can be lent that could not be lent before. */
public interface FreedUnits {

  /**
   * Called in the transaction that adds or mends them, which has locked their models.
   *
   * @param connection of that transaction
   * @param models of the units, each once
   */
  void freed(Connection connection, Collection<Model> models) throws SQLException;
}
