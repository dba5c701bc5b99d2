package org.standoff.kit.event;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.standoff.kit.Caller;
import org.standoff.kit.Role;
import org.standoff.kit.Sql;
import org.standoff.kit.Transactions;
import org.standoff.kit.hold.Expiry;

/**
 * The feed of what happened. What happened after something else has a later place, and a reader is
 * shown only places before every transaction that is still open: what commits later is behind them,
 * so whoever goes on from a cursor misses nothing, and reads the same when they read again. One
 * transaction that stays open holds the feed up, and loses nothing.
 */
@ApplicationScoped
public class Events {

  /**
   * Ordered by the column of the table: {@code tx} alone would be the text that is selected, in
   * which 1000 comes before 999. An event of a hold that tells of a unit names its house, and is no
   * other house's business, as the lines of the hold are not.
   */
  private static final String STATEMENT =
      """
      select tx::text as tx, id, at, kind, house, hold, detail,
          desk is null or ?::boolean or desk = ?::text or exists (
              select from hold_line l where l.hold = event.hold and l.house = ?::text
                  and l.house = coalesce(event.detail ->> 'house', l.house)) as seen
      from event
      where (tx, id) > (?::xid8, ?) and tx < pg_snapshot_xmin(pg_current_snapshot())
      order by event.tx, event.id
      limit ?
      """;

  private final Transactions transactions;
  private final Expiry expiry;

  Events(Transactions transactions, Expiry expiry) {
    this.transactions = transactions;
    this.expiry = expiry;
  }

  private record Looked(Event event, boolean seen) {}

  /**
   * What happened after a place, as much as the caller may see of the next {@code most} events:
   * everybody what houses did with their kit; a desk its own holds; a house those on its units.
   */
  public Feed after(Optional<Caller> caller, EventCursor cursor, int most) {
    // whoever only follows the feed is to hear what fell without anybody's asking for it
    expiry.settleIfDue();
    List<Looked> looked =
        transactions.statements(connection -> read(connection, caller, cursor, most));
    List<Event> seen = new ArrayList<>();
    EventCursor next = cursor;
    for (Looked one : looked.subList(0, Math.min(most, looked.size()))) {
      next = one.event().cursor();
      if (one.seen()) {
        seen.add(one.event());
      }
    }
    return new Feed(seen, next, looked.size() > most);
  }

  private static List<Looked> read(
      Connection connection, Optional<Caller> caller, EventCursor cursor, int most)
      throws SQLException {
    Optional<String> desk =
        caller.filter(who -> who.roles().contains(Role.BOOKER)).map(Caller::subject);
    Optional<String> house =
        caller.filter(who -> who.roles().contains(Role.PUBLISHER)).flatMap(Caller::house);
    return Sql.list(
        connection,
        STATEMENT,
        row -> new Looked(event(row), row.getBoolean("seen")),
        caller.filter(Caller::isAdmin).isPresent(),
        desk,
        house,
        cursor.tx(),
        cursor.id(),
        most + 1);
  }

  private static Event event(ResultSet row) throws SQLException {
    return new Event(
        new EventCursor(row.getString("tx"), row.getLong("id")),
        Sql.instant(row, "at"),
        row.getString("kind"),
        Optional.ofNullable(row.getString("house")),
        Optional.ofNullable(row.getObject("hold", UUID.class)),
        row.getString("detail"));
  }
}
