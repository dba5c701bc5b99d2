package org.standoff.catalogue;

/**
 * Something that a pack's author should know.
 *
 * @param severity how bad it is
 * @param file path from the folder of packs, with forward slashes: {@code
 *     core/microphones/ldc-multi-1.yaml}
 * @param line line of the file, from 1; 0 where no line can be named
 * @param pointer JSON pointer (RFC 6901) into the file; empty for the whole of it
 * @param found what stands there
 * @param expected what should stand there
 */
public record Finding(
    Severity severity, String file, int line, String pointer, String found, String expected) {

  private static final int LONGEST_FOUND = 80;

  /** How bad a finding is. */
  public enum Severity {
    /** The pack can't be used as it is; its last good version stays. */
    FAULT,
    /** The pack is used, but figures contradict each other. */
    WARNING,
    /** Something was left aside. */
    NOTE
  }

  public Finding {
    found = cut(printable(found));
  }

  /** Whether it keeps the pack from being used. */
  public boolean isFault() {
    return severity == Severity.FAULT;
  }

  @Override
  public String toString() {
    String place = line > 0 ? file + ":" + line : file;
    String at = pointer.isEmpty() ? "" : " at " + pointer;
    return place + at + ": found " + found + ", expected " + expected;
  }

  private static String cut(String text) {
    return text.length() <= LONGEST_FOUND ? text : text.substring(0, LONGEST_FOUND - 1) + "…";
  }

  /** Names of strangers' files must not break a line of the log. */
  private static String printable(String text) {
    return text.codePoints().anyMatch(Finding::breaksText)
        ? text.codePoints()
            .map(point -> breaksText(point) ? '?' : point)
            .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
            .toString()
        : text;
  }

  private static boolean breaksText(int point) {
    return Character.isISOControl(point) || Character.getType(point) == Character.SURROGATE;
  }
}
