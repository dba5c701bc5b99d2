package org.standoff.rest.media;

import org.standoff.rest.json.Rounding;

/**
 * One line of names and values, {@code gain_db=12 verdict=fits}, for scripts that split at blanks.
 * A text with a blank in it stands in double quotes. Figures are rounded by the unit in their name.
 */
public final class Line {
  private final StringBuilder text = new StringBuilder();

  /** Adds a name with its value. */
  public Line add(String name, Object value) {
    if (!text.isEmpty()) {
      text.append(' ');
    }
    String told =
        value instanceof Double figure
            ? Rounding.of(name).plain(figure)
            : value.toString().replaceAll("\\s+", " ");
    boolean quoted = told.indexOf(' ') >= 0 || told.isEmpty();
    text.append(name).append('=');
    text.append(quoted ? '"' + told.replace('"', '\'') + '"' : told);
    return this;
  }

  /** The line, ended. */
  public String text() {
    return text + "\n";
  }
}
