package org.standoff.kit.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Collection;
import org.standoff.kit.Model;
import org.standoff.kit.stock.FreedUnits;

/** Lets those who wait move up where a house adds or mends units. */
@ApplicationScoped
public class PublishedUnits implements FreedUnits {

  private final SecondHolds secondHolds;

  PublishedUnits(SecondHolds secondHolds) {
    this.secondHolds = secondHolds;
  }

  @Override
  public void freed(Connection connection, Collection<Model> models) throws SQLException {
    secondHolds.moveUp(connection, models);
  }
}
