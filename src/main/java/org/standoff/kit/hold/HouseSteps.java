package org.standoff.kit.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.UUID;
import org.standoff.kit.Caller;
import org.standoff.kit.Model;
import org.standoff.kit.ModelLocks;
import org.standoff.kit.NotPermitted;
import org.standoff.kit.Precondition;
import org.standoff.kit.Sql;

/**
 * What a house does with the units of its own in a hold: it hands them over and has them back.
 * Other houses' units in the same hold are left alone.
 */
@ApplicationScoped
public class HouseSteps {

  private static final String NOT_AFTER_ALL =
      "Only a confirmed hold can be collected, each unit once, and none while it is in repair.";
  private static final String NOTHING_BACK =
      "Nothing of this hold is out here, so nothing comes back. What nobody collected is let go by a"
          + " check-in once the hold is over, or when its desk releases it.";

  private final Ledger ledger;
  private final Handovers handovers;
  private final SecondHolds secondHolds;

  HouseSteps(Ledger ledger, Handovers handovers, SecondHolds secondHolds) {
    this.ledger = ledger;
    this.handovers = handovers;
    this.secondHolds = secondHolds;
  }

  private interface Step<T> {
    T take(Connection connection, Instant now, Hold hold, String[] houses) throws SQLException;
  }

  /**
   * Hands over all units of the caller's house that are not out yet, but for those in repair, which
   * can follow once they are mended. Collected early, they are busy from now on.
   *
   * @throws StepRefused where it is not confirmed, over, or all is out or in repair
   * @throws UnitsTaken where a unit is not there yet: with another desk, or being turned round
   */
  public Hold checkOut(Caller caller, UUID id, Precondition supposed) {
    return step(
        caller,
        id,
        supposed,
        (connection, now, hold, houses) -> {
          HeldRow.mustTake(hold, HoldStep.CHECK_OUT, NOT_AFTER_ALL);
          if (!hold.period().to().isAfter(now)) {
            throw new StepRefused(hold.state(), "The hold is over; extend it first.");
          }
          ModelLocks.take(connection, models(hold, houses));
          refuseAbsent(connection, now, hold, houses);
          int out =
              Sql.change(
                  connection,
                  """
                  update hold_unit b
                  set out_at = ?, busy = tstzrange(least(lower(busy), ?), upper(busy))
                  where hold = ? and house = any(?) and occupies and out_at is null
                    and exists (select from unit u where u.id = b.unit and u.state = 'available')
                  """,
                  now,
                  now,
                  id,
                  houses);
          if (out == 0) {
            throw new StepRefused(hold.state(), NOT_AFTER_ALL);
          }
          HeldRow.become(connection, id, HoldState.OUT, now);
          return HeldRow.seen(connection, caller, id);
        });
  }

  /**
   * Has units of the caller's house back, all that are out or some of them. They are busy until
   * they are turned round and not longer, so an early return frees them for others. Once all that
   * is out of the house is back, what was never collected is let go; once the hold is over, a house
   * of which nobody collected anything says so in the same way, and when the last unit of all
   * houses is back then, nothing is waited for any more.
   *
   * @param serials units that are back; none named means all
   * @throws WishRefused where a named unit is not out with this hold
   * @throws StepRefused where nothing is out, and nothing to let go
   */
  public CheckedIn checkIn(Caller caller, UUID id, Set<String> serials, Precondition supposed) {
    return step(
        caller,
        id,
        supposed,
        (connection, now, hold, houses) -> {
          HeldRow.mustTake(hold, HoldStep.CHECK_IN, NOTHING_BACK);
          boolean isOver = !hold.period().to().isAfter(now);
          List<Model> models = isOver ? hold.models() : models(hold, houses);
          ModelLocks.take(connection, models);
          List<Returned> back = returned(connection, hold, houses, serials);
          List<CheckedIn.Hit> hits = new ArrayList<>();
          Map<String, Handover> terms =
              handovers.of(hold.lines().stream().map(HeldLine::wanted).toList());
          for (Returned unit : back) {
            Handover house = Objects.requireNonNull(terms.get(unit.house()));
            hits.addAll(takeBack(connection, now, hold, unit, house.readyAfter(now)));
          }
          int letGo =
              back.isEmpty() && !isOver ? 0 : letGoWhatNobodyCollected(connection, hold, houses);
          if (back.isEmpty() && letGo == 0) {
            throw new StepRefused(hold.state(), NOTHING_BACK);
          }
          if (isOver) {
            letGoOnceNothingIsOut(connection, id);
          }
          HeldRow.become(connection, id, HeldRow.collected(connection, id), now);
          secondHolds.moveUp(connection, models);
          return new CheckedIn(HeldRow.seen(connection, caller, id), hits);
        });
  }

  /** A unit that comes back. */
  private record Returned(long id, String house, String serial) {}

  private static List<Returned> returned(
      Connection connection, Hold hold, String[] houses, Set<String> serials) throws SQLException {
    List<Returned> out =
        Sql.list(
            connection,
            """
            select b.unit, b.house, u.serial
            from hold_unit b join unit u on u.id = b.unit
            where b.hold = ? and b.house = any(?) and b.out_at is not null and b.in_at is null
            order by b.unit
            """,
            row ->
                new Returned(row.getLong("unit"), row.getString("house"), row.getString("serial")),
            hold.id(),
            houses);
    Set<String> unknown = new TreeSet<>(serials);
    out.forEach(unit -> unknown.remove(unit.serial()));
    if (!unknown.isEmpty()) {
      throw new WishRefused(
          unknown.stream()
              .map(
                  serial ->
                      WishFault.of(
                          WishFault.Place.UNIT, "This unit is not out with this hold.", serial))
              .toList());
    }
    return serials.isEmpty()
        ? out
        : out.stream().filter(unit -> serials.contains(unit.serial())).toList();
  }

  /**
   * Notes a return; where others have the unit before it is ready, it is theirs, and they are told.
   */
  private static List<CheckedIn.Hit> takeBack(
      Connection connection, Instant now, Hold hold, Returned unit, Instant ready)
      throws SQLException {
    List<CheckedIn.Hit> hits =
        Sql.list(
            connection,
            """
            select other.hold, h.desk, h.reference, other.house, lower(other.busy) as busy_from,
                upper(other.busy) as busy_to, ? as serial
            from hold_unit b
            join hold_unit other on other.unit = b.unit and other.occupies and other.hold <> b.hold
                and lower(other.busy) >= upper(b.busy) and lower(other.busy) < ?
                and other.in_at is null
            join hold h on h.id = other.hold
            where b.hold = ? and b.unit = ?
            order by lower(other.busy)
            """,
            row ->
                new CheckedIn.Hit(
                    row.getObject("hold", UUID.class),
                    row.getString("desk"),
                    row.getString("reference"),
                    Conflict.read(row)),
            unit.serial(),
            ready,
            hold.id(),
            unit.id());
    Sql.change(
        connection,
        """
        update hold_unit b
        set in_at = ?, busy = tstzrange(lower(busy), greatest(
            lower(busy) + interval '1 microsecond',
            least(?, (select min(lower(other.busy)) from hold_unit other
                      where other.unit = b.unit and other.occupies and other.hold <> b.hold
                        and lower(other.busy) >= upper(b.busy)))))
        where hold = ? and unit = ?
        """,
        now,
        ready,
        hold.id(),
        unit.id());
    for (CheckedIn.Hit hit : hits) {
      Sql.change(
          connection,
          """
          insert into event (kind, hold, desk, detail)
          values ('hold-hit', ?, ?, jsonb_build_object(
              'house', ?, 'serial', ?, 'ready_at', ?::timestamptz))
          """,
          hit.hold(),
          hit.desk(),
          unit.house(),
          unit.serial(),
          ready);
    }
    return hits;
  }

  private static int letGoWhatNobodyCollected(Connection connection, Hold hold, String[] houses)
      throws SQLException {
    return Sql.change(
        connection,
        """
        update hold_unit b set occupies = false
        where hold = ? and house = any(?) and occupies and out_at is null
          and not exists (select from hold_unit still
              where still.hold = b.hold and still.house = b.house
                and still.out_at is not null and still.in_at is null)
        """,
        hold.id(),
        houses);
  }

  private static void letGoOnceNothingIsOut(Connection connection, UUID id) throws SQLException {
    Sql.change(
        connection,
        """
        update hold_unit b set occupies = false
        where hold = ? and occupies and out_at is null
          and not exists (select from hold_unit still
              where still.hold = b.hold and still.out_at is not null and still.in_at is null)
        """,
        id);
  }

  private static void refuseAbsent(Connection connection, Instant now, Hold hold, String[] houses)
      throws SQLException {
    List<Conflict> conflicts =
        Sql.list(
            connection,
            """
            select b.house, u.serial, lower(other.busy) as busy_from, upper(other.busy) as busy_to
            from hold_unit b
            join hold_unit other on other.unit = b.unit and other.hold <> b.hold and other.occupies
                and (other.busy && tstzrange(least(lower(b.busy), ?), upper(b.busy))
                     or other.out_at is not null and other.in_at is null)
            join unit u on u.id = b.unit and u.state = 'available'
            where b.hold = ? and b.house = any(?) and b.occupies and b.out_at is null
            order by b.line, u.serial
            """,
            Conflict::read,
            now,
            hold.id(),
            houses);
    if (!conflicts.isEmpty()) {
      throw new UnitsTaken("Units of this hold are not there yet.", conflicts);
    }
  }

  private <T> T step(Caller caller, UUID id, Precondition supposed, Step<T> step) {
    return ledger.change(
        caller.subject(),
        (connection, now) -> {
          Hold hold = HeldRow.lock(connection, caller, id, supposed);
          String[] houses =
              hold.lines().stream()
                  .map(line -> line.wanted().house())
                  .filter(caller::publishesFor)
                  .distinct()
                  .toArray(String[]::new);
          if (houses.length == 0) {
            throw new NotPermitted("Only a house that lends something in this hold may do this.");
          }
          return step.take(connection, now, hold, houses);
        });
  }

  private static List<Model> models(Hold hold, String[] houses) {
    Set<String> theirs = Set.of(houses);
    return hold.lines().stream()
        .map(line -> line.wanted().model())
        .filter(model -> theirs.contains(model.house()))
        .distinct()
        .toList();
  }
}
