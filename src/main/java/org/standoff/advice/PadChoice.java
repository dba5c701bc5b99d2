package org.standoff.advice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.standoff.chain.Microphone;
import org.standoff.chain.Pad;
import org.standoff.chain.Settings;

/**
 * The pad comes last: the smallest attenuation that leaves the wanted headroom at the guarded
 * percentile; where none does, the one that leaves most. Of equal attenuations the microphone's own
 * pad comes first, then the preamp's, then one in the lead, which is one more thing to carry.
 */
final class PadChoice {
  /** Slack for figures that meet the wanted headroom in decimal notation. */
  private static final double SLACK_DB = 1e-9;

  /**
   * The choice.
   *
   * @param settings the settings with the pads chosen
   * @param levels what they do
   */
  record Chosen(Settings settings, Levels levels) {}

  private PadChoice() {}

  static Chosen choose(Assessor assessor, Microphone microphone, PatternView view, Settings flat) {
    double wanted = assessor.question().style().wantedHeadroomDb();
    Chosen most = null;
    for (Settings settings : combinations(assessor.question(), microphone, flat)) {
      Levels levels = assessor.levels(microphone, view, settings);
      double left = levels.guarded().leastDb();
      if (left >= wanted - SLACK_DB) {
        return new Chosen(settings, levels);
      }
      if (most == null || left > most.levels().guarded().leastDb() + SLACK_DB) {
        most = new Chosen(settings, levels);
      }
    }
    return Objects.requireNonNull(most);
  }

  /** Every combination of pads, the smallest attenuation first. */
  static List<Settings> combinations(Question question, Microphone microphone, Settings flat) {
    List<Settings> all = new ArrayList<>();
    for (Pad pad : withOut(microphone.pads())) {
      for (double preampPad : withZero(question.preamp().padsDb())) {
        for (double inLine : withZero(question.inLinePadsDb())) {
          all.add(flat.withPad(pad).withPreampPadDb(preampPad).withInLinePadDb(inLine));
        }
      }
    }
    if (all.size() > 1) {
      all.sort(
          Comparator.comparingDouble(Settings::totalPadDb)
              .thenComparingDouble(Settings::inLinePadDb)
              .thenComparingDouble(Settings::preampPadDb));
    }
    return all;
  }

  private static List<Pad> withOut(List<Pad> pads) {
    List<Pad> all = new ArrayList<>(pads.size() + 1);
    all.add(Pad.OUT);
    all.addAll(pads);
    return all;
  }

  private static List<Double> withZero(List<Double> padsDb) {
    List<Double> all = new ArrayList<>(padsDb.size() + 1);
    all.add(0.0);
    all.addAll(padsDb);
    return all;
  }
}
