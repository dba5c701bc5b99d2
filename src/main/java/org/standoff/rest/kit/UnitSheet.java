package org.standoff.rest.kit;

import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.standoff.kit.stock.KitUnit;
import org.standoff.rest.media.CsvTable;

/**
 * Units as a sheet that can be published again as it is. A note that a spreadsheet would take for a
 * formula has an apostrophe in front of it, which is taken off when the sheet comes back.
 */
final class UnitSheet {

  /** What has, or looks as if it had, such an apostrophe already. */
  private static final Pattern MARKED = Pattern.compile("'+[=+\\-@\\t\\r].*", Pattern.DOTALL);

  private final CsvTable table = new CsvTable(KitSheet.COLUMNS);

  void add(KitUnit unit) {
    List<Object> cells =
        Arrays.asList(
            unit.serial(),
            unit.microphone(),
            orEmpty(unit.matchedGroup()),
            unit.state().word(),
            unit.dayRateMinor(),
            MARKED.matcher(unit.note()).matches() ? "'" + unit.note() : unit.note(),
            orEmpty(unit.replacementMinor()),
            orEmpty(unit.matchWithinDb()));
    table.row(cells);
  }

  private static Object orEmpty(@Nullable Object value) {
    return value == null ? "" : value;
  }

  String text() {
    return table.text();
  }

  /** The note that was meant by a cell. */
  static String asTold(String cell) {
    return MARKED.matcher(cell).matches() ? cell.substring(1) : cell;
  }
}
