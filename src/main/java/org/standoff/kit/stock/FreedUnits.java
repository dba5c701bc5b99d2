package org.standoff.kit.stock;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.Collection;
import org.standoff.kit.Model;

/** Wants to know when it may be that units can be lent that could not be lent before. */
public interface FreedUnits {

  /**
   * Called in the transaction that adds, mends, regroups or retires units, which has locked their
   * models.
   *
   * @param connection of that transaction
   * @param models of the units, before and after, each once
   */
  void freed(Connection connection, Collection<Model> models) throws SQLException;
}
