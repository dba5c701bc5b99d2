package org.standoff.kit.free;

import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.standoff.kit.Model;
import org.standoff.kit.Period;
import org.standoff.kit.Sql;
import org.standoff.kit.hold.Handover;
import org.standoff.kit.house.HouseTerms;

/**
 * Houses, units and holds at one moment, whatever is booked meanwhile. Whoever asks needs a unit
 * for as long as a hold would keep it busy. A tentative hold that is past its expiry is gone,
 * whether or not anything has swept it up.
 */
final class KitSnapshot {

  private static final String BEGIN = "set transaction isolation level repeatable read, read only";

  private static final String SHELVES =
      """
      with asked as materialized (
          select * from unnest(?, ?) as a (house, needed_to)
      ), fallen as materialized (
          select id from hold where state = 'tentative' and expires_at <= ?
      ), busy as (
          select b.unit
          from asked a join hold_unit b on b.house = a.house
          where b.occupies and upper(b.busy) > ? and lower(b.busy) < a.needed_to
              and not exists (select from fallen where fallen.id = b.hold) %1$s
      ), overdue as (
          select o.unit from asked a join overdue_unit o on o.house = a.house where true %2$s
      )
      select u.house, u.microphone, u.matched_group, u.day_rate_minor, count(*)::int as all_units,
          (count(*) filter (where u.state = 'in-repair'))::int as in_repair,
          (count(*) filter (where o.unit is not null))::int as overdue,
          (count(*) filter (where u.state = 'available' and o.unit is null and b.unit is null))::int
              as free
      from asked a join unit u on u.house = a.house
          left join (select distinct unit from busy) b on b.unit = u.id
          left join (select distinct unit from overdue) o on o.unit = u.id
      where u.state <> 'retired' %3$s
      group by u.house, u.microphone, u.matched_group, u.day_rate_minor
      order by u.house, u.microphone, u.matched_group, u.day_rate_minor
      """;

  private static final String ALL_SHELVES = SHELVES.formatted("", "", "");
  private static final String SOME_SHELVES =
      SHELVES.formatted(
          "and b.microphone = any (?)", "and o.microphone = any (?)", "and u.microphone = any (?)");

  private static final String DIARIES =
      """
      with fallen as materialized (
          select id from hold where state = 'tentative' and expires_at <= ?
      )
      select u.microphone, u.id, u.matched_group,
          u.state = 'available' and o.unit is null as lendable,
          lower(b.busy) as busy_from, upper(b.busy) as busy_to
      from unit u
          left join overdue_unit o
              on o.house = u.house and o.microphone = u.microphone and o.unit = u.id
          left join hold_unit b
              on b.house = u.house and b.microphone = u.microphone and b.unit = u.id and b.occupies
                  and upper(b.busy) > ? and lower(b.busy) < ?
                  and not exists (select from fallen where fallen.id = b.hold)
      where u.house = ? and u.microphone = any (?) and u.state <> 'retired'
      order by u.microphone, u.id, busy_from
      """;

  /** From one model to the next: a look at each, not at each unit. */
  private static final String MODELS =
      """
      with recursive model as (
          select h.house, (select min(u.microphone) from unit u
              where u.house = h.house and u.state <> 'retired') as microphone
          from unnest(?) as h (house)
          union all
          select m.house, (select min(u.microphone) from unit u
              where u.house = m.house and u.microphone > m.microphone and u.state <> 'retired')
          from model m where m.microphone is not null
      )
      select house, microphone from model where microphone is not null order by house, microphone
      """;

  private final Connection connection;
  private final Instant now;
  private final String revision;

  private KitSnapshot(Connection connection, Instant now, String revision) {
    this.connection = connection;
    this.now = now;
    this.revision = revision;
  }

  /** Takes it; the transaction of the connection has not asked anything yet. */
  static KitSnapshot take(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute(BEGIN);
    }
    return Sql.first(
            connection,
            "select kit_now() as now, kit_revision() as revision",
            row -> new KitSnapshot(connection, Sql.instant(row, "now"), row.getString("revision")))
        .orElseThrow();
  }

  /** When it was taken, by the clock of the database. */
  Instant now() {
    return now;
  }

  /** Names the state of the kit. */
  String revision() {
    return revision;
  }

  /**
   * The shelves of the houses for a period.
   *
   * @param microphones the models; all where absent
   * @return in the order of houses and models; none for a model that a house does not have
   */
  List<Shelf> shelves(
      Collection<HouseTerms> houses, Optional<Collection<String>> microphones, Period period)
      throws SQLException {
    Stream<Object> always =
        Stream.of(
            houses.stream().map(HouseTerms::id).toArray(String[]::new),
            houses.stream()
                .map(house -> new Handover(house).busy(period).to())
                .toArray(Instant[]::new),
            now,
            period.from());
    Stream<Object> models =
        microphones.stream()
            .map(names -> names.toArray(String[]::new))
            .flatMap(names -> Stream.of(names, names, names));
    ShelfRows rows = new ShelfRows();
    Sql.list(
            connection,
            microphones.isPresent() ? SOME_SHELVES : ALL_SHELVES,
            ShelfRows.Row::read,
            Stream.concat(always, models).toArray())
        .forEach(rows::add);
    return rows.shelves();
  }

  /** The models that each of the houses has, in their order. */
  Map<String, List<String>> models(Collection<HouseTerms> houses) throws SQLException {
    Map<String, List<String>> models = new HashMap<>();
    Sql.list(
            connection,
            MODELS,
            row -> new Model(row.getString("house"), row.getString("microphone")),
            (Object) houses.stream().map(HouseTerms::id).toArray(String[]::new))
        .forEach(
            model ->
                models
                    .computeIfAbsent(model.house(), house -> new ArrayList<>())
                    .add(model.microphone()));
    return models;
  }

  /**
   * The diaries of some shelves of a house, by model.
   *
   * @param period what is over when it begins, or begins when it is over, is left out
   */
  Map<String, List<ShelfDiary.UnitDiary>> diaries(
      HouseTerms house, Collection<String> microphones, Period period) throws SQLException {
    DiaryRows rows = new DiaryRows();
    Sql.list(
            connection,
            DIARIES,
            DiaryRows.Row::read,
            now,
            period.from(),
            period.to(),
            house.id(),
            microphones.toArray(String[]::new))
        .forEach(rows::add);
    return rows.diaries();
  }
}
