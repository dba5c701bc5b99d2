package org.standoff.kit.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.standoff.kit.Caller;
import org.standoff.kit.Model;
import org.standoff.kit.ModelLocks;
import org.standoff.kit.NotPermitted;
import org.standoff.kit.Period;
import org.standoff.kit.Precondition;
import org.standoff.kit.Sql;

/** What a desk does with a hold of its own. */
@ApplicationScoped
public class DeskSteps {

  private final Ledger ledger;
  private final Handovers handovers;
  private final SecondHolds secondHolds;

  DeskSteps(Ledger ledger, Handovers handovers, SecondHolds secondHolds) {
    this.ledger = ledger;
    this.handovers = handovers;
    this.secondHolds = secondHolds;
  }

  private interface Step {
    void take(Connection connection, Instant now, Hold hold) throws SQLException;
  }

  /**
   * Makes a tentative hold certain: it falls no more.
   *
   * @throws StepRefused where it is not tentative
   */
  public Hold confirm(Caller caller, UUID id, Precondition supposed) {
    return step(
        caller,
        id,
        supposed,
        (connection, now, hold) -> {
          HeldRow.mustTake(hold, HoldStep.CONFIRM, "Only a tentative hold can be confirmed.");
          Instant certain = mustStand(connection, hold);
          Sql.change(
              connection,
              """
              update hold set state = 'confirmed', expires_at = null, changed_at = ?,
                  revision = revision + 1
              where id = ?
              """,
              certain,
              id);
        });
  }

  /**
   * Gives a hold up; its units go to those who wait for them. Of one that is out, what nobody
   * collected is given up; what was collected stays out until it is back.
   *
   * @throws StepRefused where all was collected, or it is over in one way or another
   */
  public Hold release(Caller caller, UUID id, Precondition supposed) {
    return step(
        caller,
        id,
        supposed,
        (connection, now, hold) -> {
          HeldRow.mustTake(hold, HoldStep.RELEASE, "A hold that is over can't be released.");
          List<Model> freed = hold.state() == HoldState.WAITING ? List.of() : hold.models();
          ModelLocks.take(connection, freed);
          int given =
              Sql.change(
                  connection,
                  """
                  update hold_unit set occupies = false
                  where hold = ? and occupies and out_at is null
                  """,
                  id);
          boolean collected = hold.state() == HoldState.OUT;
          if (collected && given == 0) {
            throw new StepRefused(
                hold.state(), "All of it was collected; it ends when that is back.");
          }
          HoldState after = collected ? HeldRow.collected(connection, id) : HoldState.RELEASED;
          HeldRow.become(connection, id, after, now);
          secondHolds.moveUp(connection, freed);
        });
  }

  /**
   * Moves the end of a hold to a later time; it keeps its units.
   *
   * @throws WishRefused where the time is not later, or a house is closed then
   * @throws UnitsTaken where others have its units in the time on top
   * @throws StepRefused where it is over in one way or another
   */
  public Hold extend(Caller caller, UUID id, Instant to, Precondition supposed) {
    return step(
        caller,
        id,
        supposed,
        (connection, now, hold) -> {
          HeldRow.mustTake(hold, HoldStep.EXTEND, "A hold that is over can't be extended.");
          extend(connection, mustStand(connection, hold), hold, to);
        });
  }

  /**
   * Keeps the units of a hold as they are to the end of the transaction, and then looks at the
   * clock: whoever would take them away does so before, and this hold has expired by then, or
   * afterwards, and finds what was decided here. A hold that waits has no units to keep.
   *
   * @return the moment from which that is so
   * @throws StepRefused where the hold fell meanwhile
   */
  private static Instant mustStand(Connection connection, Hold hold) throws SQLException {
    if (hold.state() != HoldState.WAITING) {
      ModelLocks.take(connection, hold.models());
    }
    Instant now = KitClock.now(connection);
    if (hold.expiresAt().filter(due -> !due.isAfter(now)).isPresent()) {
      throw new StepRefused(HoldState.EXPIRED, "The hold has just expired.");
    }
    return now;
  }

  private void extend(Connection connection, Instant now, Hold hold, Instant to)
      throws SQLException {
    if (!to.isAfter(hold.period().to())) {
      throw HoldPeriods.refused(
          "An extension ends later than the hold does now.",
          to,
          "later than " + hold.period().to());
    }
    Period longer = new Period(hold.period().from(), to);
    HoldPeriods.check(longer, now);
    List<WantedLine> lines = hold.lines().stream().map(HeldLine::wanted).toList();
    Map<String, Handover> houses = handovers.forReturn(lines, to);
    Map<String, Period> busy = new TreeMap<>(Handovers.busy(houses, longer));
    String[] names = busy.keySet().toArray(String[]::new);
    Instant[] ends = busy.values().stream().map(Period::to).toArray(Instant[]::new);
    List<Conflict> conflicts =
        Sql.list(
            connection,
            """
            select b.house, u.serial, lower(other.busy) as busy_from, upper(other.busy) as busy_to
            from unnest(?, ?) as h (house, busy_to)
            join hold_unit b on b.hold = ? and b.house = h.house and b.occupies and b.in_at is null
            join hold_unit other on other.unit = b.unit and other.occupies and other.hold <> b.hold
                and other.busy && tstzrange(lower(b.busy), h.busy_to)
            join unit u on u.id = b.unit
            order by b.line, u.serial
            """,
            Conflict::read,
            names,
            ends,
            hold.id());
    if (!conflicts.isEmpty()) {
      throw new UnitsTaken("Others have units of this hold in the time on top.", conflicts);
    }
    Sql.change(
        connection,
        """
        update hold_unit b
        set busy = tstzrange(lower(b.busy), greatest(upper(b.busy), h.busy_to)), lent_to = ?
        from unnest(?, ?) as h (house, busy_to)
        where b.hold = ? and b.house = h.house and b.occupies and b.in_at is null
        """,
        to,
        names,
        ends,
        hold.id());
    Sql.change(
        connection,
        "update hold set held_to = ?, changed_at = ?, revision = revision + 1 where id = ?",
        to,
        now,
        hold.id());
    if (hold.state() == HoldState.OUT) {
      // units that were late have a known end again, so who wants them afterwards can have them
      secondHolds.moveUp(connection, hold.models());
    }
  }

  private Hold step(Caller caller, UUID id, Precondition supposed, Step step) {
    return ledger.change(
        caller.subject(),
        (connection, now) -> {
          Hold hold = HeldRow.lock(connection, caller, id, supposed);
          if (!caller.booksFor(hold.desk())) {
            throw new NotPermitted("Only the desk that holds may do this.");
          }
          step.take(connection, now, hold);
          return HeldRow.seen(connection, caller, id);
        });
  }
}
