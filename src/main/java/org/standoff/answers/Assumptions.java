package org.standoff.answers;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Gathers, in words, what a question left open and how it was filled. */
public final class Assumptions {
  private final List<String> told = new ArrayList<>();

  /** Notes one, with figures. */
  public void add(String words, Object... figures) {
    told.add(String.format(Locale.ROOT, words, figures));
  }

  /** All of them, in the order in which they were made. */
  public List<String> told() {
    return List.copyOf(told);
  }
}
