package org.standoff.kit.event;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A place in the feed: everything up to it is known.
 *
 * @param tx number of a transaction, as PostgreSQL counts them without ever beginning again: that
 *     of the event, or a later one that had ended before it
 * @param id number of an event of that place; 0 for before its first
 */
public record EventCursor(String tx, long id) {

  /** Before everything. */
  public static final EventCursor START = new EventCursor("0", 0);

  /** Few enough digits for 64 bits, and many enough for every number that will ever come. */
  private static final Pattern FORM = Pattern.compile("(0|[1-9]\\d{0,17})-(0|[1-9]\\d{0,17})");

  /** Reads what {@link #text()} writes. */
  public static Optional<EventCursor> parse(String text) {
    Matcher matcher = FORM.matcher(text);
    return matcher.matches()
        ? Optional.of(new EventCursor(matcher.group(1), Long.parseLong(matcher.group(2))))
        : Optional.empty();
  }

  public String text() {
    return tx + "-" + id;
  }
}
