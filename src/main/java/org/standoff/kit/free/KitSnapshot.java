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

  /** Compiling a statement, as some servers do for what they think dear, takes longer than it. */
  private static final String BEGIN =
      "set transaction isolation level repeatable read, read only; set local jit = off";

  private static final String SHELVES =
      """
      select house, microphone, unit_count, in_repair_count,
          array_to_string(loose_rates, ' ') as loose_rates,
          array_to_string(loose_counts, ' ') as loose_counts,
          array_to_string(group_rates, ' ') as group_rates,
          array_to_string(group_counts, ' ') as group_counts
      from shelf
      where house = any (?) %s
      order by house, microphone
      """;

  private static final String OVERDUE =
      """
      select o.house, o.microphone, count(distinct o.unit)::integer as overdue_count
      from overdue_unit o join unit u on u.id = o.unit and u.state <> 'retired'
      where o.house = any (?) %s
      group by o.house, o.microphone
      """;

  private static final String TAKEN =
      """
      with asked as materialized (
          select * from unnest(?, ?) as a (house, needed_to)
      ), fallen as materialized (
          select id from hold where state = 'tentative' and expires_at <= ?
      ), taken as materialized (
          select b.unit
          from asked a join hold_unit b on b.house = a.house
          where b.occupies and upper(b.busy) > ? and lower(b.busy) < a.needed_to
              and not exists (select from fallen where fallen.id = b.hold) %1$s
          union all
          select o.unit from asked a join overdue_unit o on o.house = a.house where true %2$s
      ), lost as materialized (
          -- not a join: far fewer are taken than the planner thinks, and it would read all units
          select house, microphone, matched_group, day_rate_minor, state
          from unit where id = any (array(select unit from taken))
      )
      select house, microphone, false as grouped, day_rate_minor::text as rates,
          count(*)::integer as lost_count
      from lost where matched_group is null and state = 'available'
      group by house, microphone, day_rate_minor
      union all
      select house, microphone, true, rates, count(*)::integer
      from (select u.house, u.microphone,
                string_agg(u.day_rate_minor::text, ',' order by u.day_rate_minor) as rates
            from (select distinct house, microphone, matched_group
                  from lost where matched_group is not null and state <> 'retired') as g
                join unit u on u.house = g.house and u.microphone = g.microphone
                    and u.matched_group = g.matched_group and u.state <> 'retired'
            group by u.house, u.microphone, u.matched_group
            having bool_and(u.state = 'available')) as whole
      group by house, microphone, rates
      """;

  private static final String ALL_SHELVES = SHELVES.formatted("");
  private static final String SOME_SHELVES = SHELVES.formatted("and microphone = any (?)");
  private static final String ALL_OVERDUE = OVERDUE.formatted("");
  private static final String SOME_OVERDUE = OVERDUE.formatted("and o.microphone = any (?)");
  private static final String ALL_TAKEN = TAKEN.formatted("", "");
  private static final String SOME_TAKEN =
      TAKEN.formatted("and b.microphone = any (?)", "and o.microphone = any (?)");

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

  private static final String MODELS =
      "select house, microphone from shelf where house = any (?) order by house, microphone";

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
    String[] ids = houses.stream().map(HouseTerms::id).toArray(String[]::new);
    Instant[] neededTo =
        houses.stream().map(house -> new Handover(house).busy(period).to()).toArray(Instant[]::new);
    Optional<String[]> models = microphones.map(names -> names.toArray(String[]::new));
    Object[] where = Stream.concat(Stream.<Object>of((Object) ids), models.stream()).toArray();
    ShelfCounts counts = new ShelfCounts();
    Sql.list(
            connection,
            models.isPresent() ? SOME_SHELVES : ALL_SHELVES,
            ShelfCounts.Counted::read,
            where)
        .forEach(counts::add);
    Sql.list(
            connection,
            models.isPresent() ? SOME_OVERDUE : ALL_OVERDUE,
            ShelfCounts.Overdue::read,
            where)
        .forEach(counts::miss);
    Sql.list(
            connection,
            models.isPresent() ? SOME_TAKEN : ALL_TAKEN,
            ShelfCounts.Taken::read,
            Stream.concat(
                    Stream.<Object>of(ids, neededTo, now, period.from()),
                    models.stream().flatMap(names -> Stream.of(names, names)))
                .toArray())
        .forEach(counts::take);
    return counts.shelves();
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
