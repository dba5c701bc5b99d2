package org.standoff.rest.problem;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/**
 * One fault of a request.
 *
 * @param pointer where in the body, as a JSON pointer (RFC 6901)
 * @param parameter which query, path or header parameter
 * @param file which file of a pack
 * @param line line of the body, where it can't be read, or of the file; counted from 1
 * @param column column of that line, counted from 1
 * @param row row of a sheet, counted from 1 with its header
 * @param field name of the column of a sheet
 * @param code what is wrong, for programs
 * @param detail what is wrong and what to do, for people
 * @param found what stood there, cut where it is long
 * @param allowed what may stand there
 * @param suggestion a near miss that was perhaps meant
 * @param members what else is told of it, written as members of its own
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
@Schema(name = "Fault", description = "One fault of a request")
public record Fault(
    @Schema(description = "Where in the body, as a JSON pointer (RFC 6901)")
        @Nullable String pointer,
    @Schema(description = "Which query, path or header parameter") @Nullable String parameter,
    @Schema(
            description =
                "Path of the file of a pack; pointer and line are then places in that file")
        @Nullable String file,
    @Schema(
            description =
                "Line of the body, where it can't be read, or of the file; counted from 1")
        @Nullable Integer line,
    @Schema(description = "Column of that line, counted from 1") @Nullable Integer column,
    @Schema(description = "Row of a sheet, counted from 1; the header is the first")
        @Nullable Integer row,
    @Schema(description = "Name of the column of a sheet; absent where the whole row is meant")
        @Nullable String field,
    @Schema(description = "What is wrong, for programs; more codes may come") FaultCode code,
    @Schema(description = "What is wrong and what to do, for people") String detail,
    @Schema(description = "What stood there, cut after 80 characters") @Nullable String found,
    @Schema(description = "What may stand there") @Nullable String allowed,
    @Schema(description = "A near miss that was perhaps meant") @Nullable String suggestion,
    @Schema(hidden = true) @JsonUnwrapped ToldMembers members) {

  private static final int LONGEST_FOUND = 80;

  public Fault {
    pointer = wellFormed(pointer);
    parameter = cut(parameter);
    file = cut(file);
    field = cut(field);
    found = cut(found);
  }

  public static Fault atPointer(String pointer, FaultCode code, String detail) {
    return at(pointer, null, null, null, null, null, null, code, detail);
  }

  public static Fault ofParameter(String parameter, FaultCode code, String detail) {
    return at(null, parameter, null, null, null, null, null, code, detail);
  }

  /** A place where the text itself can't be read, so that no pointer leads there. */
  public static Fault atLine(int line, int column, String detail) {
    return at(null, null, null, line, column, null, null, FaultCode.MALFORMED, detail);
  }

  /**
   * A place in a sheet.
   *
   * @param row counted from 1, with the header
   * @param field name of the column; null where the row as a whole is meant
   */
  public static Fault inRow(int row, @Nullable String field, FaultCode code, String detail) {
    return at(null, null, null, null, null, row, field, code, detail);
  }

  /**
   * A place in a file of a pack.
   *
   * @param line counted from 1; 0 where none can be named
   * @param pointer into the file; empty for all of it
   */
  public static Fault inFile(String file, int line, String pointer, FaultCode code, String detail) {
    return at(pointer, null, file, line == 0 ? null : line, null, null, null, code, detail);
  }

  /** The same fault, of a parameter. */
  public Fault asParameter(String name) {
    return ofParameter(name, code, detail).saying(found, allowed, suggestion, members);
  }

  public Fault found(@Nullable Object value) {
    return saying(textOf(value), allowed, suggestion, members);
  }

  public Fault allowed(@Nullable String range) {
    return saying(found, range, suggestion, members);
  }

  public Fault suggestion(@Nullable String nearMiss) {
    return saying(found, allowed, nearMiss, members);
  }

  /** The same with one more member. */
  public Fault with(ProblemMember member, Object value) {
    return saying(found, allowed, suggestion, members.and(member, value));
  }

  private static Fault at(
      @Nullable String pointer,
      @Nullable String parameter,
      @Nullable String file,
      @Nullable Integer line,
      @Nullable Integer column,
      @Nullable Integer row,
      @Nullable String field,
      FaultCode code,
      String detail) {
    return new Fault(
        pointer,
        parameter,
        file,
        line,
        column,
        row,
        field,
        code,
        detail,
        null,
        null,
        null,
        ToldMembers.NONE);
  }

  private Fault saying(
      @Nullable String found,
      @Nullable String allowed,
      @Nullable String suggestion,
      ToldMembers members) {
    return new Fault(
        pointer,
        parameter,
        file,
        line,
        column,
        row,
        field,
        code,
        detail,
        found,
        allowed,
        suggestion,
        members);
  }

  private static @Nullable String textOf(@Nullable Object value) {
    return value == null ? null : value.toString();
  }

  private static @Nullable String cut(@Nullable String text) {
    return text == null || text.length() <= LONGEST_FOUND
        ? wellFormed(text)
        : wellFormed(text.substring(0, LONGEST_FOUND - 1)) + "…";
  }

  /** Half a surrogate pair, sent or left by the cut, can't be written as UTF-8. */
  private static @Nullable String wellFormed(@Nullable String text) {
    return text == null ? null : new String(text.getBytes(UTF_8), UTF_8);
  }
}
