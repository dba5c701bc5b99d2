package org.standoff.kit.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.standoff.kit.Caller;
import org.standoff.kit.Period;
import org.standoff.kit.Sql;

/** When a unit is promised, and to whom. */
@ApplicationScoped
public class Diary {

  private static final String STATEMENT =
      """
      select h.id, h.desk, h.reference, h.state, h.held_from, h.held_to,
          lower(b.busy) as busy_from, upper(b.busy) as busy_to, b.out_at, b.in_at
      from unit u
      join hold_unit b on b.unit = u.id and b.occupies and b.busy && tstzrange(?, ?)
      join hold h on h.id = b.hold
      where u.house = ? and u.serial = ? and (?::timestamptz is null or lower(b.busy) > ?::timestamptz)
      order by lower(b.busy)
      limit ?
      """;

  private final Attempts attempts;
  private final Expiry expiry;

  Diary(Attempts attempts, Expiry expiry) {
    this.attempts = attempts;
    this.expiry = expiry;
  }

  /**
   * One promise of a unit.
   *
   * @param busy from collection to the end of turn-round
   * @param state how the hold stands
   * @param outAt when the unit was handed over
   * @param inAt when it was back
   * @param hold which hold, for those who may see it
   */
  public record Entry(
      Period busy,
      HoldState state,
      Optional<Instant> outAt,
      Optional<Instant> inAt,
      Optional<Holder> hold) {}

  /**
   * The hold behind a promise.
   *
   * @param id of the hold
   * @param desk who holds
   * @param reference the desk's name for it
   * @param period from collection to return
   */
  public record Holder(UUID id, String desk, String reference, Period period) {}

  /**
   * The promises of a unit that reach into a period, in the order of their time; empty where there
   * is no such unit. Everybody may see when it is busy; whose it is then, only the desk, the house
   * and whoever may see everything.
   *
   * @param after the beginning of the last one that is known already
   * @param most how many
   */
  public Optional<List<Entry>> of(
      Optional<Caller> caller,
      String house,
      String serial,
      Period window,
      Optional<Instant> after,
      int most) {
    expiry.settleIfDue();
    return attempts.run(
        connection ->
            Sql.first(
                        connection,
                        "select from unit where house = ? and serial = ?",
                        row -> true,
                        house,
                        serial)
                    .isEmpty()
                ? Optional.empty()
                : Optional.of(
                    Sql.list(
                        connection,
                        STATEMENT,
                        row -> entry(row, caller, house),
                        window.from(),
                        window.to(),
                        house,
                        serial,
                        after,
                        after,
                        most)));
  }

  private static Entry entry(ResultSet row, Optional<Caller> caller, String house)
      throws SQLException {
    Holder holder =
        new Holder(
            row.getObject("id", UUID.class),
            row.getString("desk"),
            row.getString("reference"),
            new Period(Sql.instant(row, "held_from"), Sql.instant(row, "held_to")));
    return new Entry(
        new Period(Sql.instant(row, "busy_from"), Sql.instant(row, "busy_to")),
        HoldState.ofSpelling(row.getString("state")),
        Sql.instantIfAny(row, "out_at"),
        Sql.instantIfAny(row, "in_at"),
        Optional.of(holder)
            .filter(
                any ->
                    caller
                        .filter(who -> who.publishesFor(house) || who.booksFor(holder.desk()))
                        .isPresent()));
  }
}
