package org.standoff.floor;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Validity;

/**
 * Every microphone against every source: direct sound, reflections of the box up to a chosen order
 * by image sources, and the late field that they leave over (see {@link
 * org.standoff.acoustics.LateField}), so that nothing counts twice.
 */
public final class BleedMatrix {
  /** The highest order of reflections that is computed one by one. */
  public static final int HIGHEST_ORDER = Images.HIGHEST_ORDER;

  private final FloorField field;
  private final int order;
  private final List<List<BleedCell>> rows;

  private BleedMatrix(FloorField field, int order, List<List<BleedCell>> rows) {
    this.field = field;
    this.order = order;
    this.rows = rows;
  }

  /**
   * Computes all cells.
   *
   * @param plan a floor without {@linkplain FloorPlan#faults() faults}
   * @param order of the reflections computed one by one, 0 to {@link #HIGHEST_ORDER}
   * @throws IllegalArgumentException when the plan has a fault or the order is out of range
   */
  public static BleedMatrix of(FloorPlan plan, int order) {
    List<FloorFault> faults = plan.faults();
    if (!faults.isEmpty()) {
      throw new IllegalArgumentException("the floor has faults: " + faults);
    }
    FloorField field = new FloorField(plan, order);
    List<List<BleedCell>> rows = new ArrayList<>();
    for (FloorMicrophone microphone : plan.microphones()) {
      rows.add(row(field, microphone));
    }
    return new BleedMatrix(field, order, List.copyOf(rows));
  }

  /** One microphone, whether it stands in the plan or is only thought of. */
  static List<BleedCell> row(FloorField field, FloorMicrophone microphone) {
    Ear ear = ear(microphone);
    List<BleedCell> row = new ArrayList<>();
    for (int source = 0; source < field.plan().sources().size(); source++) {
      row.add(field.cell(microphone, ear, source));
    }
    return List.copyOf(row);
  }

  static Ear ear(FloorMicrophone microphone) {
    return new Ear(microphone.pattern(), microphone.aim(), microphone.rejectionCapDb());
  }

  public FloorPlan plan() {
    return field.plan();
  }

  /** Order of the reflections that were computed one by one. */
  public int order() {
    return order;
  }

  /** What microphone number {@code microphone} hears, in the order of the plan's sources. */
  public List<BleedCell> row(int microphone) {
    return rows.get(microphone);
  }

  public BleedCell cell(int microphone, int source) {
    return rows.get(microphone).get(source);
  }

  /** The parts of a cell's direct sound, one by one. */
  public DirectTerms terms(int microphone, int source) {
    FloorMicrophone one = plan().microphones().get(microphone);
    return field.terms(one, ear(one), cell(microphone, source), source);
  }

  /** Wanted against unwanted in one microphone. */
  public MicrophoneBleed bleed(int microphone) {
    return MicrophoneBleed.of(plan(), plan().microphones().get(microphone), row(microphone));
  }

  /** Each source in the mix of all microphones at their faders. */
  public List<SourceInMix> mix() {
    List<SourceInMix> mix = new ArrayList<>();
    for (int source = 0; source < plan().sources().size(); source++) {
      double own = 0;
      double others = 0;
      for (int microphone = 0; microphone < rows.size(); microphone++) {
        FloorMicrophone one = plan().microphones().get(microphone);
        double heard = cell(microphone, source).total().louder(one.faderDb()).sum();
        if (one.wants(plan().sources().get(source))) {
          own += heard;
        } else {
          others += heard;
        }
      }
      mix.add(
          new SourceInMix(
              plan().sources().get(source).id(),
              Level.ofPowerRatio(own),
              Level.ofPowerRatio(others)));
    }
    return List.copyOf(mix);
  }

  /** The combs of all pairs of microphones in which one is there for a source both hear. */
  public List<SharedSource> sharedSources() {
    return SharedSource.of(this);
  }

  /** What makes the figures doubtful. */
  public List<Validity> validity() {
    Set<Validity> found = new LinkedHashSet<>();
    found.addAll(plan().room().validity(Octave.all().toArray(Octave[]::new)));
    found.addAll(plan().room().air().validity());
    if (plan().equivalentBox()) {
      found.add(
          new Validity(
              "equivalent-box",
              "the room is not a box: reflections are those of a box of the same plan and volume"));
    }
    for (int microphone = 0; microphone < rows.size(); microphone++) {
      for (int source = 0; source < rows.get(microphone).size(); source++) {
        found.addAll(
            NearField.validity(
                plan().microphones().get(microphone),
                plan().sources().get(source),
                cell(microphone, source).pathM(),
                field.speedMPerS()));
      }
    }
    return List.copyOf(found);
  }
}
