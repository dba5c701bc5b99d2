package org.standoff.kit.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Collection;
import java.util.List;
import org.standoff.kit.Model;
import org.standoff.kit.ModelLocks;
import org.standoff.kit.Sql;

/** The holds that wait in line, and how they move up. */
@ApplicationScoped
public class SecondHolds {

  private final Handovers handovers;

  SecondHolds(Handovers handovers) {
    this.handovers = handovers;
  }

  /**
   * Gives units that fell free to those who wait for them, in the order in which they came: a hold
   * gets all that it wants and becomes tentative, or waits on. To be called in every transaction
   * that frees units, after it did.
   *
   * @param freed the models of which units fell free
   */
  public void moveUp(Connection connection, Collection<Model> freed) throws SQLException {
    if (freed.isEmpty()) {
      return;
    }
    ModelLocks.take(connection, freed);
    for (Hold hold : waitingFor(connection, freed)) {
      ModelLocks.take(
          connection, hold.lines().stream().map(line -> line.wanted().model()).toList());
      List<WantedLine> lines = hold.lines().stream().map(HeldLine::wanted).toList();
      Promise promise = Promise.seek(connection, lines, handovers.busy(lines, hold.period()));
      if (promise.isWhole()) {
        HoldRows.promise(connection, hold, promise, now(connection));
      }
    }
  }

  /** Those that somebody else is about to change are left to them. */
  private static List<Hold> waitingFor(Connection connection, Collection<Model> freed)
      throws SQLException {
    return HoldRows.list(
        connection,
        """
        where state = 'waiting' and held_from > kit_now() and exists (
            select from hold_line l
            join unnest(?, ?) as f (house, microphone)
                on l.house = f.house and l.microphone = f.microphone
            where l.hold = hold.id)
        order by made_at, id
        for update skip locked
        """,
        freed.stream().map(Model::house).toArray(String[]::new),
        freed.stream().map(Model::microphone).toArray(String[]::new));
  }

  private static Instant now(Connection connection) throws SQLException {
    return Sql.first(connection, "select kit_now() as now", row -> Sql.instant(row, "now"))
        .orElseThrow();
  }
}
