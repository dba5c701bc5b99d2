package org.standoff.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.standoff.chain.Filter;
import org.standoff.chain.Microphone;
import org.standoff.chain.Pad;
import org.standoff.chain.Settings;

/** Prices every single change of recommended settings: one setting moves, the rest stays. */
public final class Changes {
  /** How far a microphone is moved to price a change of distance, in m. */
  public static final double STEP_M = 0.05;

  private final Assessor assessor;
  private final Assessment from;
  private final List<Change> changes = new ArrayList<>();

  private Changes(Assessor assessor, Assessment from) {
    this.assessor = assessor;
    this.from = from;
  }

  /** All single changes, by setting. */
  public static List<Change> of(Assessor assessor, Assessment from) {
    Changes changes = new Changes(assessor, from);
    changes.patterns();
    changes.filters();
    changes.pads();
    changes.distances();
    return List.copyOf(changes.changes);
  }

  /** A filter in words. */
  static String words(Optional<Filter> filter) {
    return filter
        .map(
            f ->
                String.format(
                    Locale.ROOT,
                    "%.0f Hz, %.0f dB per octave",
                    f.highPass().cornerHz(),
                    (double) f.highPass().slopeDbPerOctave()))
        .orElse("out");
  }

  private void patterns() {
    for (PatternView view : assessor.views(from.microphone())) {
      boolean same =
          view.pattern().equals(from.view().pattern())
              && view.outputId().equals(from.view().outputId());
      if (!same) {
        Settings before = from.settings();
        Settings settings =
            new Settings(
                view.outputId(),
                view.pattern(),
                before.filter(),
                before.pad(),
                before.inLinePadDb(),
                before.preampPadDb());
        add(
            "pattern",
            view.pattern().name().id(),
            assessor.assess(from.microphone(), view, settings));
      }
    }
  }

  private void filters() {
    Microphone microphone = from.microphone();
    List<Optional<Filter>> all = new ArrayList<>();
    all.add(Optional.empty());
    FilterChoice.offered(microphone, assessor.question().preamp())
        .forEach(filter -> all.add(Optional.of(filter)));
    for (Optional<Filter> filter : all) {
      if (!filter.equals(from.settings().filter())) {
        add("filter", words(filter), with(from.settings().withFilter(filter)));
      }
    }
  }

  private void pads() {
    Settings now = from.settings();
    List<Pad> pads = new ArrayList<>();
    pads.add(Pad.OUT);
    pads.addAll(from.microphone().pads());
    for (Pad pad : pads) {
      if (!pad.equals(now.pad())) {
        add("pad", decibels(pad.padDb()), with(now.withPad(pad)));
      }
    }
    for (double padDb : zeroAnd(assessor.question().inLinePadsDb())) {
      if (padDb != now.inLinePadDb()) {
        add("in-line-pad", decibels(padDb), with(now.withInLinePadDb(padDb)));
      }
    }
    for (double padDb : zeroAnd(assessor.question().preamp().padsDb())) {
      if (padDb != now.preampPadDb()) {
        add("preamp-pad", decibels(padDb), with(now.withPreampPadDb(padDb)));
      }
    }
  }

  private void distances() {
    double here = assessor.question().positions().get(0).distanceM();
    if (here - STEP_M >= Limits.NEAREST_M) {
      moved(-STEP_M);
    }
    moved(STEP_M);
  }

  private void moved(double byM) {
    Assessor there = assessor.at(hereM -> Math.max(Limits.NEAREST_M, hereM + byM));
    PatternView view = there.viewOf(from);
    add(
        "distance",
        String.format(
            Locale.ROOT, "%.0f cm %s", Math.abs(byM) * 100, byM < 0 ? "closer" : "farther"),
        there.assess(from.microphone(), view, from.settings()));
  }

  private Assessment with(Settings settings) {
    return assessor.assess(from.microphone(), from.view(), settings);
  }

  private void add(String setting, String to, Assessment changed) {
    changes.add(Change.between(setting, to, from, changed));
  }

  private static String decibels(double padDb) {
    return padDb == 0 ? "out" : String.format(Locale.ROOT, "%.0f dB", padDb);
  }

  private static List<Double> zeroAnd(List<Double> padsDb) {
    List<Double> all = new ArrayList<>();
    all.add(0.0);
    all.addAll(padsDb);
    return all;
  }
}
