package org.standoff.kit.hold;

import static java.util.stream.Collectors.groupingBy;
import static java.util.stream.Collectors.mapping;
import static java.util.stream.Collectors.toList;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.standoff.kit.Period;
import org.standoff.kit.Sql;

/** Holds as rows, their lines and units with them. */
final class HoldRows {

  private static final String COLUMNS =
      """
      hold.id, hold.desk, hold.reference, hold.held_from, hold.held_to, hold.state,
      hold.lifetime_min, hold.expires_at, hold.made_at, hold.changed_at, hold.revision
      """;

  private static final String MAKE =
      """
      with made as (
          insert into hold (id, desk, reference, held_from, held_to, state, lifetime_min,
              expires_at, made_at, changed_at)
          values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?)
      ), lines as (
          insert into hold_line (hold, line, house, microphone, quantity, matched)
          select ?, n - 1, house, microphone, quantity, matched
          from unnest(?, ?, ?, ?) with ordinality as l (house, microphone, quantity, matched, n)
      )
      """;

  private static final String PROMISE =
      """
      insert into hold_unit (hold, line, unit, house, microphone, day_rate_minor, replacement_minor,
          lent_to, busy)
      select ?, line, unit, house, microphone, rate, replacement, lent_to,
          tstzrange(busy_from, busy_to)
      from unnest(?, ?, ?, ?, ?, ?, ?, ?, ?)
          as u (line, unit, house, microphone, rate, replacement, lent_to, busy_from, busy_to)
      """;

  private HoldRows() {}

  /** A row of the table, without its lines. */
  private record Head(
      UUID id,
      String desk,
      String reference,
      Period period,
      HoldState state,
      Optional<Instant> expiresAt,
      Instant madeAt,
      Instant changedAt,
      long revision) {

    static Head read(ResultSet row) throws SQLException {
      HoldState state = HoldState.ofSpelling(row.getString("state"));
      return new Head(
          row.getObject("id", UUID.class),
          row.getString("desk"),
          row.getString("reference"),
          new Period(Sql.instant(row, "held_from"), Sql.instant(row, "held_to")),
          state,
          Sql.instantIfAny(row, "expires_at").filter(any -> canFall(state)),
          Sql.instant(row, "made_at"),
          Sql.instant(row, "changed_at"),
          row.getLong("revision"));
    }

    private static boolean canFall(HoldState state) {
      return state == HoldState.WAITING || state == HoldState.TENTATIVE;
    }

    Hold with(List<HeldLine> lines) {
      return new Hold(
          id, desk, reference, period, state, expiresAt, madeAt, changedAt, revision, lines);
    }
  }

  private record LineKey(UUID hold, int line) {}

  /** Writes a new hold with its lines and units in one statement. */
  static void insert(Connection connection, Hold hold, Duration lifetime, Promise promise)
      throws SQLException {
    List<Object> values = new ArrayList<>();
    values.add(hold.id());
    values.add(hold.desk());
    values.add(hold.reference());
    values.add(hold.period().from());
    values.add(hold.period().to());
    values.add(hold.state().spelt());
    values.add((int) lifetime.toMinutes());
    values.add(hold.expiresAt());
    values.add(hold.madeAt());
    values.add(hold.changedAt());
    values.add(hold.id());
    List<WantedLine> lines = hold.lines().stream().map(HeldLine::wanted).toList();
    values.add(lines.stream().map(WantedLine::house).toArray(String[]::new));
    values.add(lines.stream().map(WantedLine::microphone).toArray(String[]::new));
    values.add(lines.stream().map(WantedLine::quantity).toArray(Integer[]::new));
    values.add(lines.stream().map(WantedLine::matched).toArray(Boolean[]::new));
    values.addAll(unitValues(hold, promise));
    Sql.change(connection, MAKE + PROMISE, values.toArray());
  }

  /** Gives a hold that waited its units. */
  static void promise(Connection connection, Hold hold, Promise promise, Instant now)
      throws SQLException {
    Sql.change(connection, PROMISE, unitValues(hold, promise).toArray());
    Sql.change(
        connection,
        """
        update hold
        set state = 'tentative', expires_at = ?::timestamptz + make_interval(mins => lifetime_min),
            changed_at = ?, revision = revision + 1
        where id = ?
        """,
        now,
        now,
        hold.id());
  }

  private static List<Object> unitValues(Hold hold, Promise promise) {
    List<Integer> places = new ArrayList<>();
    List<Promise.PromisedUnit> units = new ArrayList<>();
    for (int line = 0; line < promise.units().size(); line++) {
      for (Promise.PromisedUnit unit : promise.units().get(line)) {
        places.add(line);
        units.add(unit);
      }
    }
    List<WantedLine> wanted = places.stream().map(line -> hold.lines().get(line).wanted()).toList();
    return List.of(
        hold.id(),
        places.toArray(Integer[]::new),
        units.stream().map(Promise.PromisedUnit::id).toArray(Long[]::new),
        wanted.stream().map(WantedLine::house).toArray(String[]::new),
        wanted.stream().map(WantedLine::microphone).toArray(String[]::new),
        units.stream().map(unit -> unit.held().dayRateMinor()).toArray(Long[]::new),
        units.stream()
            .map(unit -> unit.held().replacementMinor().orElse(null))
            .toArray(Long[]::new),
        units.stream().map(unit -> unit.held().lentTo()).toArray(Instant[]::new),
        units.stream().map(unit -> unit.held().busy().from()).toArray(Instant[]::new),
        units.stream().map(unit -> unit.held().busy().to()).toArray(Instant[]::new));
  }

  /** A hold by its id. */
  static Optional<Hold> find(Connection connection, UUID id) throws SQLException {
    return list(connection, "where hold.id = ?", id).stream().findFirst();
  }

  /** A hold by its id, locked to the end of the transaction. */
  static Optional<Hold> lock(Connection connection, UUID id) throws SQLException {
    Sql.list(connection, "select from hold where id = ? for update", row -> true, id);
    return find(connection, id);
  }

  /** The holds that such an end of a statement finds, in its order. */
  static List<Hold> list(Connection connection, String rest, Object... values) throws SQLException {
    List<Head> heads =
        Sql.list(connection, "select " + COLUMNS + " from hold " + rest, Head::read, values);
    if (heads.isEmpty()) {
      return List.of();
    }
    UUID[] ids = heads.stream().map(Head::id).toArray(UUID[]::new);
    Map<LineKey, List<HeldUnit>> units =
        Sql.list(
                connection,
                """
                select b.hold, b.line, u.serial, u.matched_group, u.match_within_db, b.occupies,
                    coalesce(b.day_rate_minor, u.day_rate_minor) as day_rate_minor,
                    b.replacement_minor, coalesce(b.lent_to, h.held_to) as lent_to,
                    lower(b.busy) as busy_from, upper(b.busy) as busy_to, b.out_at, b.in_at
                from hold_unit b join unit u on u.id = b.unit join hold h on h.id = b.hold
                where b.hold = any(?)
                order by b.hold, b.line, u.serial
                """,
                row -> Map.entry(key(row), unit(row)),
                (Object) ids)
            .stream()
            .collect(groupingBy(Map.Entry::getKey, mapping(Map.Entry::getValue, toList())));
    Map<UUID, List<HeldLine>> lines =
        Sql.list(
                connection,
                """
                select hold, line, house, microphone, quantity, matched
                from hold_line where hold = any(?) order by hold, line
                """,
                row ->
                    Map.entry(
                        row.getObject("hold", UUID.class),
                        new HeldLine(
                            row.getInt("line"),
                            wanted(row),
                            units.getOrDefault(key(row), List.of()))),
                (Object) ids)
            .stream()
            .collect(groupingBy(Map.Entry::getKey, mapping(Map.Entry::getValue, toList())));
    return heads.stream().map(head -> head.with(lines.getOrDefault(head.id(), List.of()))).toList();
  }

  private static LineKey key(ResultSet row) throws SQLException {
    return new LineKey(row.getObject("hold", UUID.class), row.getInt("line"));
  }

  private static WantedLine wanted(ResultSet row) throws SQLException {
    return new WantedLine(
        row.getString("house"),
        row.getString("microphone"),
        row.getInt("quantity"),
        row.getBoolean("matched"));
  }

  private static HeldUnit unit(ResultSet row) throws SQLException {
    return new HeldUnit(
        row.getString("serial"),
        Optional.ofNullable(row.getString("matched_group")),
        row.getLong("day_rate_minor"),
        Optional.ofNullable(row.getObject("match_within_db", Double.class)),
        Optional.ofNullable(row.getObject("replacement_minor", Long.class)),
        row.getBoolean("occupies"),
        Sql.instant(row, "lent_to"),
        new Period(Sql.instant(row, "busy_from"), Sql.instant(row, "busy_to")),
        Sql.instantIfAny(row, "out_at"),
        Sql.instantIfAny(row, "in_at"));
  }
}
