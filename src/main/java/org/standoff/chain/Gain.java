package org.standoff.chain;

/**
 * A preamp's gain and what was wanted of it.
 *
 * @param wantedDb the gain that would put the peak exactly where it is wanted, in dB
 * @param setDb the setting, in dB: the wanted gain rounded down to a step, or the end of the range
 * @param verdict how the two compare
 */
public record Gain(double wantedDb, double setDb, Verdict verdict) {

  /** How a wanted gain sits in the range of the preamp. */
  public enum Verdict {
    /** Inside the range. */
    WITHIN("within"),
    /** The preamp can't be turned down that far: a pad is needed. */
    BELOW_RANGE("below-range"),
    /** The preamp can't be turned up that far: the peak stays under the target. */
    ABOVE_RANGE("above-range"),
    /** Told in the question, not chosen. */
    GIVEN("given");

    private final String id;

    Verdict(String id) {
      this.id = id;
    }

    /** The word used in answers. */
    public String id() {
      return id;
    }
  }

  static Gain chosen(GainRange range, double wantedDb) {
    Verdict verdict =
        range.reaches(wantedDb)
            ? Verdict.WITHIN
            : wantedDb < range.leastDb() ? Verdict.BELOW_RANGE : Verdict.ABOVE_RANGE;
    return new Gain(wantedDb, range.settingFor(wantedDb), verdict);
  }

  static Gain given(double gainDb) {
    return new Gain(gainDb, gainDb, Verdict.GIVEN);
  }
}
