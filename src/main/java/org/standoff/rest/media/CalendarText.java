package org.standoff.rest.media;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;

/**
 * Writes iCalendar (RFC 5545): lines end in CR LF and are folded after 75 octets, never within a
 * character (3.1); texts are escaped (3.3.11); moments are in UTC, to the second (3.3.5).
 */
public final class CalendarText {

  public static final String MEDIA_TYPE = "text/calendar";

  private static final int LONGEST_LINE_OCTETS = 75;
  private static final String END_OF_LINE = "\r\n";
  private static final DateTimeFormatter UTC =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'").withZone(ZoneOffset.UTC);

  private final StringBuilder out = new StringBuilder();

  public void begin(String component) {
    plain("BEGIN", component);
  }

  public void end(String component) {
    plain("END", component);
  }

  /** A value that needs no escaping. */
  public void plain(String property, String value) {
    fold(property + ":" + value);
  }

  /** A text, of whatever characters; a control character has no place in one and is left out. */
  public void text(String property, String value) {
    StringBuilder escaped = new StringBuilder();
    value
        .codePoints()
        .forEach(
            character -> {
              switch (character) {
                case '\\', ';', ',' -> escaped.append('\\').appendCodePoint(character);
                case '\n' -> escaped.append("\\n");
                default -> {
                  if (character == '\t' || !Character.isISOControl(character)) {
                    escaped.appendCodePoint(character);
                  }
                }
              }
            });
    plain(property, escaped.toString());
  }

  /** A moment; a part of a second is cut off. */
  public void moment(String property, Instant moment) {
    plain(property, UTC.format(moment));
  }

  private void fold(String line) {
    int octets = 0;
    for (int i = 0; i < line.length(); ) {
      String character = new String(Character.toChars(line.codePointAt(i)));
      int size = character.getBytes(StandardCharsets.UTF_8).length;
      if (octets + size > LONGEST_LINE_OCTETS) {
        out.append(END_OF_LINE).append(' ');
        octets = 1;
      }
      out.append(character);
      octets += size;
      i += character.length();
    }
    out.append(END_OF_LINE);
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
