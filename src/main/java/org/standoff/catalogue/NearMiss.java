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

  /** The known name with the fewest slips (letters put in, left out or changed), if it is near. */
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

  /** Edit distance (Levenshtein 1966) by rows. */
  private static int slips(String a, String b) {
    int[] above = new int[b.length() + 1];
    for (int j = 0; j < above.length; j++) {
      above[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int[] row = new int[b.length() + 1];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = above[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        row[j] = Math.min(change, 1 + Math.min(above[j], row[j - 1]));
      }
      above = row;
    }
    return above[b.length()];
  }
}
