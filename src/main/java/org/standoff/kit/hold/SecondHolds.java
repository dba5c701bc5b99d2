package org.standoff.kit.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.standoff.kit.Model;
import org.standoff.kit.ModelLocks;

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
    List<Hold> waiting = waitingFor(connection, freed);
    // all at once: with the row of the first locked, no more models are asked for
    ModelLocks.take(connection, waiting.stream().flatMap(hold -> hold.models().stream()).toList());
    for (Hold hold : waiting) {
      if (seek(connection, hold).isWhole()) {
        give(connection, hold.id());
      }
    }
  }

  /**
   * Waits for whoever is changing the hold: were it left to them, and they failed, nobody would
   * come back to it. What they made of it is what is looked at.
   */
  private void give(Connection connection, UUID id) throws SQLException {
    Optional<Hold> hold =
        HoldRows.lock(connection, id).filter(now -> now.state() == HoldState.WAITING);
    if (hold.isPresent()) {
      Promise promise = seek(connection, hold.get());
      if (promise.isWhole()) {
        HoldRows.promise(connection, hold.get(), promise, KitClock.now(connection));
      }
    }
  }

  private Promise seek(Connection connection, Hold hold) throws SQLException {
    List<WantedLine> lines = hold.lines().stream().map(HeldLine::wanted).toList();
    return Promise.seek(connection, lines, handovers.of(lines), hold.period());
  }

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
        """,
        freed.stream().map(Model::house).toArray(String[]::new),
        freed.stream().map(Model::microphone).toArray(String[]::new));
  }
}
