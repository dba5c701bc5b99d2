package org.standoff.rest.media;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.standoff.rest.json.Rounding;

/**
 * A table as CSV (RFC 4180: CRLF, header line, quotes doubled). A text that a spreadsheet would
 * take for a formula gets an apostrophe in front; numbers are rounded by the unit in the column's
 * name and otherwise left alone.
 */
public final class CsvTable {
  public static final String MEDIA_TYPE = "text/csv";

  private static final String FORMULA_STARTS = "=+-@\t\r";
  private static final CsvMapper MAPPER = new CsvMapper();

  private final List<String> columns;
  private final CsvSchema schema;
  private final List<List<Object>> rows = new ArrayList<>();

  /** A table with these columns. */
  public CsvTable(List<String> columns) {
    CsvSchema.Builder builder = CsvSchema.builder().setUseHeader(true).setLineSeparator("\r\n");
    columns.forEach(builder::addColumn);
    this.columns = List.copyOf(columns);
    this.schema = builder.build();
  }

  /**
   * Adds a row.
   *
   * @param cells one a column: a number, a text, or null for an empty cell
   */
  public void row(List<? extends @Nullable Object> cells) {
    List<Object> row = new ArrayList<>(cells.size());
    for (int i = 0; i < columns.size(); i++) {
      row.add(cell(columns.get(i), cells.get(i)));
    }
    rows.add(row);
  }

  private static Object cell(String column, @Nullable Object value) {
    if (value == null) {
      return "";
    }
    if (value instanceof Double figure) {
      return Rounding.of(column).plain(figure);
    }
    return value instanceof Number ? value : harmless(value.toString());
  }

  /** The whole table. */
  public String text() {
    try {
      return MAPPER.writer(schema).writeValueAsString(rows);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("texts and numbers can always be written", impossible);
    }
  }

  private static String harmless(String text) {
    boolean formula = !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
    return formula ? "'" + text : text;
  }
}
