package org.standoff.kit.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.standoff.kit.Period;
import org.standoff.kit.Sql;

/** From when something that is short can be had for as long as it is wanted. */
@ApplicationScoped
class NextFree {

  /** Ends of promises that are tried; what comes free later than that is not told. */
  private static final int MOST_TRIED = 500;

  private static final String STOCK =
      """
      select u.id, u.serial, u.matched_group, lower(b.busy) as busy_from, upper(b.busy) as busy_to,
          (select count(*) from unit g
           where g.house = u.house and g.matched_group = u.matched_group
             and g.state <> 'retired') as group_size
      from unit u
      left join hold_unit b
          on b.unit = u.id and b.occupies and b.busy && tstzrange(?, null)
      where u.house = ? and u.microphone = ? and u.state = 'available'
        and not exists (select from overdue_unit late where late.unit = u.id)
      order by u.matched_group, u.serial
      """;

  private final Handovers handovers;

  NextFree(Handovers handovers) {
    this.handovers = handovers;
  }

  /** The same shortfalls with the time from which each, alone, could be met. */
  List<Shortfall> add(Connection connection, List<Shortfall> shortfalls, Period period)
      throws SQLException {
    List<Shortfall> told = new ArrayList<>();
    Map<String, Handover> houses =
        handovers.of(shortfalls.stream().map(Shortfall::wanted).toList());
    for (Shortfall shortfall : shortfalls) {
      Optional<Handover> house = Optional.ofNullable(houses.get(shortfall.wanted().house()));
      Optional<Instant> from =
          house.isPresent()
              ? from(connection, shortfall.wanted(), period, house.get())
              : Optional.empty();
      told.add(new Shortfall(shortfall.line(), shortfall.wanted(), shortfall.freeCount(), from));
    }
    return told;
  }

  private static Optional<Instant> from(
      Connection connection, WantedLine wanted, Period period, Handover house) throws SQLException {
    Map<FreeUnit, List<Period>> stock = stock(connection, wanted, period.from());
    TreeSet<Instant> ends = new TreeSet<>();
    stock.values().forEach(busy -> busy.forEach(promise -> ends.add(promise.to())));
    Duration length = period.length();
    return ends.stream()
        .map(house::opening)
        .filter(start -> start.isAfter(period.from()))
        .distinct()
        .limit(MOST_TRIED)
        .filter(start -> isMet(wanted, stock, house.busy(new Period(start, start.plus(length)))))
        .findFirst();
  }

  private static boolean isMet(WantedLine wanted, Map<FreeUnit, List<Period>> stock, Period busy) {
    List<FreeUnit> free =
        stock.entrySet().stream()
            .filter(unit -> unit.getValue().stream().noneMatch(busy::overlaps))
            .map(Map.Entry::getKey)
            .toList();
    return new UnitChoice(free).take(wanted).isPresent();
  }

  private static Map<FreeUnit, List<Period>> stock(
      Connection connection, WantedLine wanted, Instant from) throws SQLException {
    Map<FreeUnit, List<Period>> stock = new LinkedHashMap<>();
    Sql.list(
            connection,
            STOCK,
            row -> {
              Optional<String> group = Optional.ofNullable(row.getString("matched_group"));
              FreeUnit unit =
                  new FreeUnit(
                      row.getLong("id"),
                      row.getString("serial"),
                      group,
                      group.isPresent() ? row.getInt("group_size") : 1);
              Optional<Period> busy =
                  Sql.instantIfAny(row, "busy_to").isPresent()
                      ? Optional.of(
                          new Period(Sql.instant(row, "busy_from"), Sql.instant(row, "busy_to")))
                      : Optional.empty();
              return Map.entry(unit, busy);
            },
            from,
            wanted.house(),
            wanted.microphone())
        .forEach(
            found ->
                found
                    .getValue()
                    .ifPresentOrElse(
                        busy ->
                            stock
                                .computeIfAbsent(found.getKey(), any -> new ArrayList<>())
                                .add(busy),
                        () -> stock.computeIfAbsent(found.getKey(), any -> new ArrayList<>())));
    return stock;
  }
}
