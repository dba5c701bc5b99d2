package org.standoff.kit;

/** Which characters texts of strangers may have. */
public final class Texts {

  /** No control character, and no half of a surrogate pair, which is no text in UTF-8. */
  public static final String ONE_LINE = "[^\\x00-\\x1f\\x7f-\\x9f\\ud800-\\udfff]*";

  /** The same, and not blank: as the description says it of what is checked in two steps. */
  public static final String NAME = "(?=.*\\S)" + ONE_LINE;

  /** As in one line, with tabs and ends of lines. */
  public static final String LINES =
      "[^\\x00-\\x08\\x0b\\x0c\\x0e-\\x1f\\x7f-\\x9f\\ud800-\\udfff]*";

  private Texts() {}
}
