package org.standoff.kit.free;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standoff.kit.Model;

/** Puts shelves together: what stands on them, less what is taken from them for a while. */
final class ShelfCounts {

  /**
   * What a house has of a model, busy or not.
   *
   * @param loose available units that belong to no group, by rate
   * @param groups available groups, by the rates of their units
   */
  record Counted(
      Model model,
      int unitCount,
      int inRepairCount,
      Map<String, Integer> loose,
      Map<String, Integer> groups) {

    static Counted read(ResultSet row) throws SQLException {
      return new Counted(
          modelOf(row),
          row.getInt("unit_count"),
          row.getInt("in_repair_count"),
          counts(row, "loose"),
          counts(row, "group"));
    }

    private static Map<String, Integer> counts(ResultSet row, String kind) throws SQLException {
      List<String> rates = words(row.getString(kind + "_rates"));
      List<String> counts = words(row.getString(kind + "_counts"));
      Map<String, Integer> read = new LinkedHashMap<>();
      for (int i = 0; i < rates.size(); i++) {
        read.put(rates.get(i), Integer.valueOf(counts.get(i)));
      }
      return read;
    }

    private static List<String> words(String text) {
      return text.isEmpty() ? List.of() : List.of(text.split(" "));
    }
  }

  /**
   * Units that should be back.
   *
   * @param count how many
   */
  record Overdue(Model model, int count) {

    static Overdue read(ResultSet row) throws SQLException {
      return new Overdue(modelOf(row), row.getInt("overdue_count"));
    }
  }

  /**
   * Units or groups that are not free.
   *
   * @param grouped whether they are groups, of which at least one unit is not
   * @param rates of the units, or of those of each group
   * @param count how many
   */
  record Taken(Model model, boolean grouped, String rates, int count) {

    static Taken read(ResultSet row) throws SQLException {
      return new Taken(
          modelOf(row),
          row.getBoolean("grouped"),
          row.getString("rates"),
          row.getInt("lost_count"));
    }
  }

  private final Map<Model, Counted> shelves = new LinkedHashMap<>();
  private final Map<Model, Integer> overdue = new HashMap<>();

  void add(Counted counted) {
    shelves.put(counted.model(), counted);
  }

  void miss(Overdue units) {
    overdue.put(units.model(), units.count());
  }

  void take(Taken taken) {
    Optional.ofNullable(shelves.get(taken.model()))
        .map(shelf -> taken.grouped() ? shelf.groups() : shelf.loose())
        .ifPresent(counts -> counts.merge(taken.rates(), -taken.count(), Integer::sum));
  }

  /** In the order in which they were added. */
  List<Shelf> shelves() {
    return shelves.values().stream().map(this::shelf).toList();
  }

  private Shelf shelf(Counted counted) {
    List<Shelf.Loose> loose = new ArrayList<>();
    counted
        .loose()
        .forEach(
            (rate, count) -> {
              if (count > 0) {
                loose.add(new Shelf.Loose(Long.parseLong(rate), count));
              }
            });
    List<Shelf.Group> groups = new ArrayList<>();
    counted
        .groups()
        .forEach(
            (rates, count) -> {
              if (count > 0) {
                groups.add(
                    new Shelf.Group(
                        Arrays.stream(rates.split(",")).map(Long::valueOf).toList(), count));
              }
            });
    return new Shelf(
        counted.model(),
        counted.unitCount(),
        counted.inRepairCount(),
        overdue.getOrDefault(counted.model(), 0),
        loose,
        groups);
  }

  private static Model modelOf(ResultSet row) throws SQLException {
    return new Model(row.getString("house"), row.getString("microphone"));
  }
}
