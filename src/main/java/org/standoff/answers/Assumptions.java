package org.standoff.answers;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Gathers, in words, what a question left open and how it was filled. */
public final class Assumptions {
  /** What two steps both had to fill is told once. */
  private final Set<String> told = new LinkedHashSet<>();

  /** Notes one, with figures. */
  public void add(String words, Object... figures) {
    told.add(String.format(Locale.ROOT, words, figures));
  }

  /** All of them, in the order in which they were made. */
  public List<String> told() {
    return List.copyOf(told);
  }
}
