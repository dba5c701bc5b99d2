package org.standoff.contract;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The table of who may do what, {@code src/test/resources/who-may.csv}: a row an operation, a
 * column a caller, in each cell the status that the caller gets. A plus says that the answer names
 * a certain hold, a minus that it does not.
 *
 * @param callers in the order of the columns
 * @param rows in the order of the file
 */
record WhoMay(List<String> callers, List<Row> rows) {

  private static final Path TABLE = Path.of("src", "test", "resources", "who-may.csv");

  record Row(String operation, List<Cell> cells) {}

  record Cell(String text) {

    int status() {
      return Integer.parseInt(text.substring(0, 3));
    }

    boolean tells() {
      return text.endsWith("+");
    }

    boolean hides() {
      return text.endsWith("-");
    }

    /** For people. */
    private String word() {
      return switch (text) {
        case "401" -> "401";
        case "403" -> "no";
        case "404" -> "not there";
        default -> tells() ? "yes, the hold too" : hides() ? "yes, not the hold" : "yes";
      };
    }
  }

  static WhoMay table() {
    try {
      List<List<String>> lines =
          Files.readAllLines(TABLE).stream().map(line -> List.of(line.split(","))).toList();
      return new WhoMay(
          tail(lines.get(0)),
          lines.stream()
              .skip(1)
              .map(line -> new Row(line.get(0), tail(line).stream().map(Cell::new).toList()))
              .toList());
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }

  /** The same for a handbook. */
  String markdown() {
    StringBuilder text = new StringBuilder(line("operation", callers));
    text.append(line("---", callers.stream().map(caller -> "---").toList()));
    for (Row row : rows) {
      text.append(line("`" + row.operation() + "`", row.cells().stream().map(Cell::word).toList()));
    }
    return text.toString();
  }

  private static String line(String first, List<String> cells) {
    return cells.stream().collect(Collectors.joining(" | ", "| " + first + " | ", " |\n"));
  }

  private static List<String> tail(List<String> cells) {
    return cells.subList(1, cells.size());
  }
}
