package org.standoff.kit.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import org.standoff.kit.Model;
import org.standoff.kit.Sql;
import org.standoff.kit.house.ChangedTerms;

/**
 * Lets those who wait move up where a house changes its terms: with less turn-round or other hours
 * they need units for a shorter time. What was promised stays as it was promised.
 */
@ApplicationScoped
public class NewTerms implements ChangedTerms {

  private final SecondHolds secondHolds;

  NewTerms(SecondHolds secondHolds) {
    this.secondHolds = secondHolds;
  }

  @Override
  public void changed(Connection connection, String house) throws SQLException {
    secondHolds.moveUp(
        connection,
        Sql.list(
            connection,
            """
            select distinct l.house, l.microphone
            from hold h join hold_line l on l.hold = h.id
            where h.state = 'waiting' and l.house = ?
            """,
            row -> new Model(row.getString("house"), row.getString("microphone")),
            house));
  }
}
