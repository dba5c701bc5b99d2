package org.standoff.catalogue;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds what was probably meant. */
public final class NearMiss {

  /** Beyond one wrong letter in three a suggestion is a guess. */
  private static final int LETTERS_PER_SLIP = 3;

  /** Text from outside is compared no further than this, so that a long one costs nothing. */
  private static final int LONGEST = 130;

  private record Candidate(String name, int slips) {}

  private NearMiss() {}

  /**
   * The known name with the fewest slips (letters put in, left out, changed or swapped), if it is
   * near.
   */
  public static Optional<String> of(String found, Collection<String> known) {
    if (found.length() > LONGEST) {
      return Optional.empty();
    }
    String text = found.toLowerCase(Locale.ROOT);
    int most = Math.max(1, text.length() / LETTERS_PER_SLIP);
    return known.stream()
        .filter(name -> Math.abs(name.length() - text.length()) <= most)
        .map(name -> new Candidate(name, slips(text, name.toLowerCase(Locale.ROOT))))
        .filter(candidate -> candidate.slips() <= most)
        .min(Comparator.comparingInt(Candidate::slips).thenComparing(Candidate::name))
        .map(Candidate::name);
  }

  /** Edit distance with neighbours swapped (Damerau 1964), each part of a text altered once. */
  private static int slips(String a, String b) {
    int[][] table = new int[a.length() + 1][b.length() + 1];
    for (int i = 0; i <= a.length(); i++) {
      table[i][0] = i;
    }
    for (int j = 0; j <= b.length(); j++) {
      table[0][j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      for (int j = 1; j <= b.length(); j++) {
        boolean same = a.charAt(i - 1) == b.charAt(j - 1);
        int least = table[i - 1][j - 1] + (same ? 0 : 1);
        least = Math.min(least, 1 + Math.min(table[i - 1][j], table[i][j - 1]));
        boolean swapped =
            i > 1
                && j > 1
                && a.charAt(i - 1) == b.charAt(j - 2)
                && a.charAt(i - 2) == b.charAt(j - 1);
        table[i][j] = swapped ? Math.min(least, table[i - 2][j - 2] + 1) : least;
      }
    }
    return table[a.length()][b.length()];
  }
}
