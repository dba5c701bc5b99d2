package org.standoff.kit.free;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.kit.Period;
import org.standoff.kit.Sql;

/** Puts diaries together from rows of busy periods by model, unit and time, in that order. */
final class DiaryRows {

  /**
   * A unit, and one of its busy periods where it has any.
   *
   * @param unit number of its row
   */
  record Row(
      String microphone,
      long unit,
      Optional<String> group,
      boolean lendable,
      Optional<Period> busy) {

    static Row read(ResultSet row) throws SQLException {
      return new Row(
          row.getString("microphone"),
          row.getLong("id"),
          Optional.ofNullable(row.getString("matched_group")),
          row.getBoolean("lendable"),
          Sql.instantIfAny(row, "busy_from").isEmpty()
              ? Optional.empty()
              : Optional.of(
                  new Period(Sql.instant(row, "busy_from"), Sql.instant(row, "busy_to"))));
    }
  }

  private final Map<String, List<ShelfDiary.UnitDiary>> diaries = new HashMap<>();
  private final List<Period> busy = new ArrayList<>();
  private @Nullable Row unit;

  void add(Row row) {
    if (unit == null || unit.unit() != row.unit()) {
      endUnit();
      unit = row;
    }
    row.busy().ifPresent(busy::add);
  }

  /** By model. */
  Map<String, List<ShelfDiary.UnitDiary>> diaries() {
    endUnit();
    return diaries;
  }

  private void endUnit() {
    if (unit != null) {
      diaries
          .computeIfAbsent(unit.microphone(), model -> new ArrayList<>())
          .add(new ShelfDiary.UnitDiary(unit.group(), unit.lendable(), busy));
    }
    unit = null;
    busy.clear();
  }
}
