package org.standoff.rest.kit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.dataformat.csv.CsvFactory;
import com.fasterxml.jackson.dataformat.csv.CsvParser;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.CharacterCodingException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.NearMiss;
import org.standoff.kit.Texts;
import org.standoff.kit.stock.FaultyKit;
import org.standoff.kit.stock.KitCheck;
import org.standoff.kit.stock.KitFault;
import org.standoff.kit.stock.KitUnit;
import org.standoff.kit.stock.UnitState;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.problem.ProblemType;

/**
 * Reads a kit from CSV (RFC 4180) in UTF-8, row by row. The header names the columns, in any order.
 * Every fault is told with its row, where the header is row 1, and its column, up to a bounded
 * number.
 */
final class KitSheet {

  private static final String SERIAL = "serial";
  private static final String MICROPHONE = "microphone";
  private static final String MATCHED_GROUP = "matched_group";
  private static final String STATE = "state";
  private static final String DAY_RATE = "day_rate_minor";
  private static final String NOTE = "note";
  private static final String REPLACEMENT = "replacement_minor";
  private static final String MATCH_WITHIN = "match_within_db";

  /** As the sheet that is given out has them. */
  static final List<String> COLUMNS =
      List.of(SERIAL, MICROPHONE, MATCHED_GROUP, STATE, DAY_RATE, NOTE, REPLACEMENT, MATCH_WITHIN);

  private static final List<String> NEEDED = List.of(SERIAL, MICROPHONE, DAY_RATE);

  private static final int HEADER_ROW = 1;
  private static final int LONGEST_CELL = 10_000;

  /** A row with more is not read on, nor is anything after it. */
  private static final int MOST_CELLS = 100;

  private static final Pattern NAME = Pattern.compile(KitUnit.NAME);
  private static final Pattern ONE_LINE = Pattern.compile(Texts.ONE_LINE);
  private static final Pattern NOTE_TEXT = Pattern.compile(Texts.LINES);
  private static final Pattern WHOLE_NUMBER = Pattern.compile("\\d{1,12}");
  private static final Pattern DECIMAL = Pattern.compile("\\d{1,3}(\\.\\d{1,6})?");

  private static final CsvFactory CSV =
      CsvFactory.builder()
          .streamReadConstraints(
              StreamReadConstraints.builder().maxStringLength(LONGEST_CELL).build())
          .build();

  private final List<Fault> faults = new ArrayList<>();
  private final List<KitUnit> units = new ArrayList<>();
  private final List<Integer> rowOf = new ArrayList<>();
  private final Map<String, String> seen = new HashMap<>();
  private List<String> columns = List.of();
  private int row;
  private boolean complete;

  private KitSheet() {}

  /**
   * Reads a sheet to its end, or to where it can't be read on.
   *
   * @param sheet whole, in memory
   */
  static KitSheet read(InputStream sheet) {
    KitSheet read = new KitSheet();
    try (CsvParser rows = CSV.createParser(new StrictUtf8(sheet))) {
      read.readAll(rows);
    } catch (CharacterCodingException notUtf8) {
      read.fail(
          FaultCode.MALFORMED, "This row has bytes that are not UTF-8: save the sheet as such.");
    } catch (StreamConstraintsException tooLong) {
      read.fail(
          FaultCode.WRONG_LENGTH,
          "A cell is longer than " + LONGEST_CELL + " characters; a quote may be left open.",
          "at most " + LONGEST_CELL + " characters");
    } catch (JsonProcessingException malformed) {
      read.fail(
          FaultCode.MALFORMED,
          "This row is no CSV (RFC 4180): a quote inside a cell is doubled, and a cell that opens"
              + " with one closes with one.");
    } catch (IOException lostFromMemory) {
      throw new UncheckedIOException(lostFromMemory);
    }
    return read;
  }

  /**
   * The units.
   *
   * @throws InvalidRequest where anything is wrong with the sheet, in itself or by the check
   */
  List<KitUnit> units(KitCheck check) {
    faults.addAll(inRows(check.faults(units, complete && faults.isEmpty())));
    if (!faults.isEmpty()) {
      throw new InvalidRequest(
          ProblemType.RULE_BROKEN,
          faults.stream()
              .sorted(Comparator.comparing(Fault::row))
              .limit(KitCheck.MOST_FAULTS)
              .toList());
    }
    return units;
  }

  /** What turned out to be wrong with the units later on, told where they stand. */
  InvalidRequest refused(FaultyKit faulty) {
    return new InvalidRequest(ProblemType.RULE_BROKEN, inRows(faulty.faults()));
  }

  private List<Fault> inRows(List<KitFault> found) {
    return found.stream().map(fault -> KitFaults.inRow(fault, rowOf.get(fault.index()))).toList();
  }

  private void readAll(CsvParser rows) throws IOException {
    // counted before a row is read, so that one that can't be read has its number
    row = HEADER_ROW;
    @Nullable List<String> cells = next(rows);
    if (cells == null) {
      fail(FaultCode.MISSING, "The sheet is empty; its first row names the columns.");
      return;
    }
    if (cells.size() > MOST_CELLS) {
      failUnread("The header has far more columns than a kit, and was not read to its end.");
      return;
    }
    header(cells);
    row++;
    cells = next(rows);
    while (cells != null && faults.size() < KitCheck.MOST_FAULTS) {
      if (cells.size() > MOST_CELLS) {
        failUnread("This row has far more cells than the header, and was not read to its end.");
        return;
      }
      if (!isBlank(cells)) {
        if (units.size() == KitTold.MOST_UNITS) {
          fail(
              FaultCode.WRONG_LENGTH,
              "The sheet has too many rows: a kit has at most " + KitTold.MOST_UNITS + " units.");
          return;
        }
        unit(cells);
      }
      row++;
      cells = next(rows);
    }
    complete = cells == null;
  }

  /** The cells of the next row, up to one more than it may have; null where there is none. */
  private static @Nullable List<String> next(CsvParser rows) throws IOException {
    if (rows.nextToken() == null) {
      return null;
    }
    List<String> cells = new ArrayList<>(COLUMNS.size());
    while (cells.size() <= MOST_CELLS && rows.nextToken() == JsonToken.VALUE_STRING) {
      cells.add(rows.getText());
    }
    return cells;
  }

  private void header(List<String> cells) {
    columns = cells.stream().map(String::strip).toList();
    for (String column : columns) {
      if (!COLUMNS.contains(column)) {
        faults.add(
            Fault.inRow(row, column, FaultCode.UNKNOWN_NAME, "No column has this name.")
                .found(column)
                .allowed(String.join(", ", COLUMNS))
                .suggestion(NearMiss.of(column, COLUMNS).orElse(null)));
      } else if (columns.indexOf(column) != columns.lastIndexOf(column)
          && faults.stream().noneMatch(fault -> column.equals(fault.field()))) {
        faults.add(
            Fault.inRow(row, column, FaultCode.CONTRADICTION, "This column is there twice.")
                .found(column));
      }
    }
    for (String needed : NEEDED) {
      if (!columns.contains(needed)) {
        faults.add(
            Fault.inRow(row, needed, FaultCode.MISSING, "The sheet needs this column.")
                .allowed(String.join(", ", COLUMNS)));
      }
    }
    if (!faults.isEmpty()) {
      // the rows can't be understood without their header
      throw new InvalidRequest(
          ProblemType.RULE_BROKEN, faults.stream().limit(KitCheck.MOST_FAULTS).toList());
    }
  }

  private void unit(List<String> cells) {
    if (cells.size() != columns.size()) {
      faults.add(
          Fault.inRow(row, null, FaultCode.WRONG_LENGTH, "A row has as many cells as the header.")
              .found(cells.size() + " cells")
              .allowed(columns.size() + " cells"));
      return;
    }
    int before = faults.size();
    String serial = name(cells, SERIAL).orElse("");
    if (serial.isEmpty() && faults.size() == before) {
      faults.add(Fault.inRow(row, SERIAL, FaultCode.MISSING, "A unit has a serial number."));
    }
    String microphone = microphone(cells);
    @Nullable String group = name(cells, MATCHED_GROUP).map(this::once).orElse(null);
    UnitState state = state(cells);
    long rate = amount(cells, DAY_RATE, KitUnit.MOST_RATE_MINOR).orElse(0L);
    String note = note(cells);
    @Nullable Long replacement =
        cell(cells, REPLACEMENT).isEmpty()
            ? null
            : amount(cells, REPLACEMENT, KitUnit.MOST_REPLACEMENT_MINOR).orElse(null);
    @Nullable Double within = matchWithin(cells);
    if (faults.size() == before) {
      units.add(new KitUnit(serial, microphone, group, state, rate, note, replacement, within));
      rowOf.add(row);
    }
  }

  private Optional<String> name(List<String> cells, String column) {
    String text = cell(cells, column);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    if (!NAME.matcher(text).matches()) {
      faults.add(
          Fault.inRow(row, column, FaultCode.WRONG_FORM, "This is no name of this form.")
              .found(text)
              .allowed(KitUnit.NAME));
    }
    return Optional.of(text);
  }

  /** Whether the catalogue has it is asked when all rows are read. */
  private String microphone(List<String> cells) {
    String text = cell(cells, MICROPHONE);
    if (text.isEmpty()) {
      faults.add(
          Fault.inRow(row, MICROPHONE, FaultCode.MISSING, "A unit has a microphone.")
              .allowed("an id from /v1/microphones"));
    } else if (text.length() > ItemId.LONGEST) {
      faults.add(
          Fault.inRow(row, MICROPHONE, FaultCode.WRONG_LENGTH, "No id is as long as this.")
              .found(text)
              .allowed("at most " + ItemId.LONGEST + " characters"));
    } else if (!ONE_LINE.matcher(text).matches()) {
      faults.add(
          Fault.inRow(row, MICROPHONE, FaultCode.WRONG_FORM, "No id has control characters.")
              .allowed("an id from /v1/microphones"));
    }
    return once(text);
  }

  private UnitState state(List<String> cells) {
    String text = cell(cells, STATE);
    if (text.isEmpty()) {
      return UnitState.AVAILABLE;
    }
    Optional<UnitState> state = UnitState.of(text);
    if (state.isEmpty()) {
      List<String> words = Arrays.stream(UnitState.values()).map(UnitState::word).toList();
      faults.add(
          Fault.inRow(row, STATE, FaultCode.UNKNOWN_VALUE, "No unit has this state.")
              .found(text)
              .allowed(String.join(", ", words))
              .suggestion(NearMiss.of(text, words).orElse(null)));
    }
    return state.orElse(UnitState.AVAILABLE);
  }

  private Optional<Long> amount(List<String> cells, String column, long most) {
    String text = cell(cells, column);
    boolean whole = WHOLE_NUMBER.matcher(text).matches();
    if (whole && Long.parseLong(text) <= most) {
      return Optional.of(Long.parseLong(text));
    }
    faults.add(
        Fault.inRow(
                row,
                column,
                text.isEmpty()
                    ? FaultCode.MISSING
                    : whole ? FaultCode.OUT_OF_RANGE : FaultCode.WRONG_TYPE,
                "An amount is a whole number of minor units, with no point.")
            .found(text)
            .allowed("0 to " + most));
    return Optional.empty();
  }

  private @Nullable Double matchWithin(List<String> cells) {
    String text = cell(cells, MATCH_WITHIN);
    if (text.isEmpty()) {
      return null;
    }
    boolean number = DECIMAL.matcher(text).matches();
    if (number && Double.parseDouble(text) <= KitUnit.WIDEST_MATCH_DB) {
      return Double.valueOf(text);
    }
    faults.add(
        Fault.inRow(
                row,
                MATCH_WITHIN,
                number ? FaultCode.OUT_OF_RANGE : FaultCode.WRONG_TYPE,
                "How well a group matches is a number of decibels, with a decimal point.")
            .found(text)
            .allowed("0 to " + KitUnit.WIDEST_MATCH_DB));
    return null;
  }

  private String note(List<String> cells) {
    String text = UnitSheet.asTold(column(NOTE) < 0 ? "" : cells.get(column(NOTE)));
    if (text.length() > KitUnit.LONGEST_NOTE) {
      faults.add(
          Fault.inRow(row, NOTE, FaultCode.WRONG_LENGTH, "This note is too long.")
              .found(text)
              .allowed("at most " + KitUnit.LONGEST_NOTE + " characters"));
    } else if (!NOTE_TEXT.matcher(text).matches()) {
      faults.add(
          Fault.inRow(row, NOTE, FaultCode.WRONG_FORM, "A note has no control characters.")
              .allowed("text, tabs and ends of lines"));
    }
    return text;
  }

  private String cell(List<String> cells, String column) {
    int at = column(column);
    return at < 0 ? "" : cells.get(at).strip();
  }

  private int column(String name) {
    return columns.indexOf(name);
  }

  /** One copy of what comes in thousands of rows. */
  private String once(String text) {
    return seen.computeIfAbsent(text, same -> same);
  }

  private void failUnread(String detail) {
    faults.add(
        Fault.inRow(row, null, FaultCode.WRONG_LENGTH, detail)
            .found("more than " + MOST_CELLS + " cells")
            .allowed("at most " + COLUMNS.size() + " cells"));
  }

  private void fail(FaultCode code, String detail) {
    fail(code, detail, null);
  }

  private void fail(FaultCode code, String detail, @Nullable String allowed) {
    faults.add(Fault.inRow(row, null, code, detail).allowed(allowed));
  }

  private static boolean isBlank(List<String> cells) {
    return cells.isEmpty() || cells.size() == 1 && cells.get(0).isBlank();
  }
}
