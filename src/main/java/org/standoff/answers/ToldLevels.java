package org.standoff.answers;

import java.util.Optional;
import org.standoff.acoustics.RmsSpl;
import org.standoff.acoustics.SourceLevel;
import org.standoff.acoustics.UncertainDb;

/** Puts a told or measured level in the place of the catalogue's. */
public final class ToldLevels {
  /** Spread of a level that somebody told, in dB: takes often run 3 dB over checks (practice). */
  static final double TOLD_SPREAD_DB = 3;

  /** Spread of a measured level, in dB: a meter and the next take (assumed). */
  static final double MEASURED_SPREAD_DB = 1;

  private ToldLevels() {}

  /**
   * The same played at the told level; empty, and a fault, where the level is not told once.
   *
   * @param distanceM at which it holds where it does not say
   * @param pointer where it stands in the question
   */
  public static Optional<Played> apply(
      Played played,
      ToldLevel told,
      double distanceM,
      String pointer,
      References references,
      Assumptions assumptions) {
    if ((told.peakDbSpl() == null) == (told.levelDbSpl() == null)) {
      references.fault(
          QuestionFault.of(
              pointer,
              told.peakDbSpl() == null
                  ? QuestionFault.Kind.MISSING
                  : QuestionFault.Kind.CONTRADICTION,
              "Give peak_db_spl or level_db_spl, one of them."));
      return Optional.empty();
    }
    double crest = played.level().crestDb();
    double peak = told.peakDbSpl() == null ? told.levelDbSpl() + crest : told.peakDbSpl();
    boolean measured = Boolean.TRUE.equals(told.measured());
    double spread = measured ? MEASURED_SPREAD_DB : TOLD_SPREAD_DB;
    if (told.spreadDb() != null) {
      spread = told.spreadDb();
    } else {
      assumptions.add(
          "the %s level is taken as ± %.0f dB (5th to 95th percentile)",
          measured ? "measured" : "told", spread);
    }
    if (told.peakDbSpl() == null) {
      assumptions.add(
          "its peaks are taken to stand %.0f dB over the long-term level, as the catalogue has it",
          crest);
    }
    double atM = told.atM() == null ? distanceM : told.atM();
    return Optional.of(
        played.at(new SourceLevel(atM, new UncertainDb(peak, spread), new RmsSpl(peak - crest))));
  }
}
