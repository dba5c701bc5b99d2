package org.standoff.kit.hold;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.standoff.kit.Model;
import org.standoff.kit.Period;
import org.standoff.kit.Sql;

/** What of some models is free, read while {@link org.standoff.kit.ModelLocks} are held. */
final class FreeUnits {

  /** Beside being available: in no overlapping promise, and not with a desk that is late. */
  private static final String IS_FREE =
      """
      not exists (select from hold_unit b
            where b.unit = u.id and b.occupies and b.busy && tstzrange(m.busy_from, m.busy_to))
        and not exists (select from overdue_unit late where late.unit = u.id)
      """;

  /** In order before they are looked at, so that no more are looked at than are wanted. */
  private static final String SINGLES =
      """
      select m.house, m.microphone, u.id, u.serial, u.day_rate_minor, u.replacement_minor
      from unnest(?, ?, ?, ?, ?) as m (house, microphone, busy_from, busy_to, most),
      lateral (select u.*
          from (select id, serial, day_rate_minor, replacement_minor from unit
                where house = m.house and microphone = m.microphone and state = 'available'
                  and matched_group is null
                order by day_rate_minor, serial) as u
          where %s
          order by u.day_rate_minor, u.serial
          limit m.most) as u
      """
          .formatted(IS_FREE);

  private static final String GROUPED =
      """
      select m.house, m.microphone, u.id, u.serial, u.matched_group, u.day_rate_minor,
          u.match_within_db, u.replacement_minor,
          (select count(*) from unit g
           where g.house = u.house and g.matched_group = u.matched_group
             and g.state <> 'retired') as group_size
      from unnest(?, ?, ?, ?) as m (house, microphone, busy_from, busy_to)
      join shelf s on s.house = m.house and s.microphone = m.microphone and s.group_counts <> '{}'
      join unit u on u.house = m.house and u.microphone = m.microphone and u.state = 'available'
          and u.matched_group is not null and %s
      order by u.matched_group, u.serial
      """
          .formatted(IS_FREE);

  private FreeUnits() {}

  /**
   * For each model of the lines as many single units as they want together, the cheapest first, and
   * the members of groups.
   *
   * @param busy when a unit that they take is busy, by house
   */
  static Map<Model, List<FreeUnit>> of(
      Connection connection, List<WantedLine> lines, Map<String, Period> busy) throws SQLException {
    Map<Model, Integer> unmatched = new TreeMap<>();
    for (WantedLine line : lines) {
      unmatched.merge(line.model(), line.matched() ? 0 : line.quantity(), Integer::sum);
    }
    Map<Model, List<FreeUnit>> found = new HashMap<>();
    unmatched.keySet().forEach(model -> found.put(model, new ArrayList<>()));
    add(
        found,
        Sql.list(
            connection,
            SINGLES,
            row -> Map.entry(model(row), unit(row, Optional.empty(), 1, Optional.empty())),
            values(unmatched.keySet(), busy, (Object) unmatched.values().toArray(Integer[]::new))));
    add(
        found,
        Sql.list(
            connection,
            GROUPED,
            row ->
                Map.entry(
                    model(row),
                    unit(
                        row,
                        Optional.of(row.getString("matched_group")),
                        row.getInt("group_size"),
                        Optional.ofNullable(row.getObject("match_within_db", Double.class)))),
            values(unmatched.keySet(), busy)));
    return found;
  }

  private static void add(Map<Model, List<FreeUnit>> found, List<Map.Entry<Model, FreeUnit>> more) {
    for (Map.Entry<Model, FreeUnit> unit : more) {
      found.computeIfAbsent(unit.getKey(), any -> new ArrayList<>()).add(unit.getValue());
    }
  }

  private static Model model(ResultSet row) throws SQLException {
    return new Model(row.getString("house"), row.getString("microphone"));
  }

  private static FreeUnit unit(
      ResultSet row, Optional<String> group, int groupSize, Optional<Double> matchWithinDb)
      throws SQLException {
    return new FreeUnit(
        row.getLong("id"),
        row.getString("serial"),
        group,
        groupSize,
        row.getLong("day_rate_minor"),
        matchWithinDb,
        Optional.ofNullable(row.getObject("replacement_minor", Long.class)));
  }

  private static Object[] values(
      Collection<Model> models, Map<String, Period> busy, Object... more) {
    List<Object> values = new ArrayList<>();
    values.add(models.stream().map(Model::house).toArray(String[]::new));
    values.add(models.stream().map(Model::microphone).toArray(String[]::new));
    List<Period> periods = models.stream().map(model -> busyAt(model.house(), busy)).toList();
    values.add(periods.stream().map(Period::from).toArray(Instant[]::new));
    values.add(periods.stream().map(Period::to).toArray(Instant[]::new));
    values.addAll(List.of(more));
    return values.toArray();
  }

  private static Period busyAt(String house, Map<String, Period> busy) {
    return Optional.ofNullable(busy.get(house))
        .orElseThrow(() -> new IllegalArgumentException("no terms of " + house));
  }
}
