package org.standoff.chain;

/**
 * A preamp's gain and what was wanted of it.
 *
 * @param wantedDb the gain that would put the peak exactly where it is wanted, in dB
 * @param setDb the setting, in dB: the wanted gain rounded down to a step, or the end of the range
 * @param verdict how the two compare
 */
public record Gain(double wantedDb, double setDb, GainVerdict verdict) {

  static Gain chosen(GainRange range, double wantedDb) {
    GainVerdict verdict =
        range.reaches(wantedDb)
            ? GainVerdict.WITHIN
            : wantedDb < range.leastDb() ? GainVerdict.BELOW_RANGE : GainVerdict.ABOVE_RANGE;
    return new Gain(wantedDb, range.settingFor(wantedDb), verdict);
  }

  static Gain given(double gainDb) {
    return new Gain(gainDb, gainDb, GainVerdict.GIVEN);
  }
}
