package org.standoff.kit.free;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.standoff.kit.Model;

/** Puts shelves together from counts by house, model, group and rate, in that order. */
final class ShelfRows {

  /**
   * Units of one rate and one group.
   *
   * @param all that are not retired
   * @param inRepair in repair among them
   * @param overdue not brought back among them
   * @param free free among them
   */
  record Row(
      Model model,
      Optional<String> group,
      long dayRateMinor,
      int all,
      int inRepair,
      int overdue,
      int free) {

    static Row read(ResultSet row) throws SQLException {
      return new Row(
          new Model(row.getString("house"), row.getString("microphone")),
          Optional.ofNullable(row.getString("matched_group")),
          row.getLong("day_rate_minor"),
          row.getInt("all_units"),
          row.getInt("in_repair"),
          row.getInt("overdue"),
          row.getInt("free"));
    }
  }

  private final List<Shelf> shelves = new ArrayList<>();
  private Optional<Model> model = Optional.empty();
  private int unitCount;
  private int inRepairCount;
  private int overdueCount;
  private final List<Shelf.Loose> loose = new ArrayList<>();
  private final List<Shelf.Group> groups = new ArrayList<>();
  private Optional<String> group = Optional.empty();
  private final List<Long> ratesOfGroup = new ArrayList<>();
  private int membersOfGroup;

  void add(Row row) {
    if (!Optional.of(row.model()).equals(model)) {
      endShelf();
      model = Optional.of(row.model());
    }
    if (!row.group().equals(group)) {
      endGroup();
      group = row.group();
    }
    unitCount += row.all();
    inRepairCount += row.inRepair();
    overdueCount += row.overdue();
    if (group.isPresent()) {
      membersOfGroup += row.all();
      ratesOfGroup.addAll(Collections.nCopies(row.free(), row.dayRateMinor()));
    } else if (row.free() > 0) {
      loose.add(new Shelf.Loose(row.dayRateMinor(), row.free()));
    }
  }

  List<Shelf> shelves() {
    endShelf();
    return shelves;
  }

  private void endGroup() {
    if (group.isPresent() && ratesOfGroup.size() == membersOfGroup) {
      groups.add(new Shelf.Group(group.get(), ratesOfGroup));
    }
    group = Optional.empty();
    membersOfGroup = 0;
    ratesOfGroup.clear();
  }

  private void endShelf() {
    endGroup();
    model.ifPresent(
        of -> shelves.add(new Shelf(of, unitCount, inRepairCount, overdueCount, loose, groups)));
    model = Optional.empty();
    unitCount = 0;
    inRepairCount = 0;
    overdueCount = 0;
    loose.clear();
    groups.clear();
  }
}
