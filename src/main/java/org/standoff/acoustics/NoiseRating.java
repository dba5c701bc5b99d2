package org.standoff.acoustics;

import java.util.List;
import java.util.OptionalInt;

/**
 * Rating curves for the noise of an empty room, as octave levels in dB. Octaves outside a curve's
 * range have −∞ there: the curve says nothing of them.
 */
public final class NoiseRating {
  private static final double NONE = Double.NEGATIVE_INFINITY;

  /** NC-15 to NC-40 at 63 Hz to 8 kHz: Beranek 1957, ANSI/ASA S12.2. */
  private static final List<NoiseCriterion> NC =
      List.of(
          new NoiseCriterion(15, Octaves.of(NONE, 47, 36, 29, 22, 17, 14, 12, 11, NONE)),
          new NoiseCriterion(20, Octaves.of(NONE, 51, 40, 33, 26, 22, 19, 17, 16, NONE)),
          new NoiseCriterion(25, Octaves.of(NONE, 54, 44, 37, 31, 27, 24, 22, 21, NONE)),
          new NoiseCriterion(30, Octaves.of(NONE, 57, 48, 41, 35, 31, 29, 28, 27, NONE)),
          new NoiseCriterion(35, Octaves.of(NONE, 60, 52, 45, 40, 36, 34, 33, 32, NONE)),
          new NoiseCriterion(40, Octaves.of(NONE, 64, 56, 50, 45, 41, 39, 38, 37, NONE)));

  /** ISO R 1996:1971 with the coefficients of BS 8233:1999, L = a + b NR at 31.5 Hz to 8 kHz. */
  private static final double[] NR_A = {55.4, 35.4, 22.0, 12.0, 4.2, 0, -3.5, -6.1, -8.0};

  private static final double[] NR_B = {0.681, 0.790, 0.870, 0.930, 0.980, 1, 1.015, 1.025, 1.030};

  /** Slope of the RC curves in dB per octave (Blazier, from memory). */
  private static final double RC_DB_PER_OCTAVE = -5;

  private NoiseRating() {}

  /**
   * The NC curve of that number.
   *
   * @throws IllegalArgumentException when the number is not 15, 20, 25, 30, 35 or 40
   */
  public static Octaves nc(int curve) {
    return NC.stream()
        .filter(criterion -> criterion.number() == curve)
        .map(NoiseCriterion::levelsDb)
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no NC curve " + curve + " is tabled"));
  }

  /** The lowest tabled NC curve that no octave exceeds; empty when NC-40 is exceeded. */
  public static OptionalInt lowestNc(Octaves levelsDb) {
    return NC.stream()
        .filter(criterion -> criterion.covers(levelsDb))
        .mapToInt(NoiseCriterion::number)
        .findFirst();
  }

  /** The NR curve, L = a + b NR, of a number from 0 to 130. */
  public static Octaves nr(double number) {
    double[] levels = Octaves.filled(NONE).toArray();
    for (int band = 0; band < NR_A.length; band++) {
      levels[band] = NR_A[band] + NR_B[band] * number;
    }
    return Octaves.of(levels);
  }

  /** The RC curve: −5 dB per octave through its number at 1 kHz, 31.5 Hz to 4 kHz. */
  public static Octaves rc(double number) {
    double[] levels = Octaves.filled(NONE).toArray();
    for (int band = 0; band <= Octave.HZ_4K.ordinal(); band++) {
      levels[band] = number + RC_DB_PER_OCTAVE * (band - Octave.HZ_1K.ordinal());
    }
    return Octaves.of(levels);
  }

  private record NoiseCriterion(int number, Octaves levelsDb) {
    boolean covers(Octaves foundDb) {
      return Octave.all().stream()
          .filter(octave -> levelsDb.get(octave) != NONE)
          .allMatch(octave -> foundDb.get(octave) <= levelsDb.get(octave));
    }
  }
}
