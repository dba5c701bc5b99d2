package org.standoff.floor;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Point3;

/**
 * Looks for remedies that can work in one microphone. Aim and barrier are only thought of where
 * direct sound carries the worst offender, material only where the room carries most of what is
 * unwanted; each is computed anew with the change in place, and what gains next to nothing is left
 * out.
 */
public final class Remedies {
  /** Less than this nobody would notice. */
  public static final double LEAST_GAIN_DB = 0.5;

  private static final double[] BARRIER_SHARES = {0.25, 0.5, 0.75};

  private final BleedMatrix matrix;
  private final FloorPlan plan;
  private final FloorMicrophone microphone;
  private final MicrophoneBleed today;
  private final RemedyOptions options;
  private final List<Remedy> found = new ArrayList<>();

  private Remedies(BleedMatrix matrix, int index, RemedyOptions options) {
    this.matrix = matrix;
    this.plan = matrix.plan();
    this.microphone = plan.microphones().get(index);
    this.today = matrix.bleed(index);
    this.options = options;
  }

  /** The remedies for microphone number {@code microphone}, the strongest first. */
  public static List<Remedy> of(BleedMatrix matrix, int microphone, RemedyOptions options) {
    Remedies remedies = new Remedies(matrix, microphone, options);
    if (remedies.today.isolationDb().isPresent()) {
      remedies.look();
    }
    remedies.found.sort(Comparator.comparingDouble(Remedy::gainDb).reversed());
    return List.copyOf(remedies.found);
  }

  private void look() {
    Offender worst = today.offenders().get(0);
    FloorSource offending = plan.source(worst.sourceId()).orElseThrow();
    if (worst.direct()) {
      aim();
      options.barrier().ifPresent(barrier -> barrier(barrier, offending));
    }
    for (FloorPattern other : microphone.otherPatterns()) {
      pattern(other);
    }
    closer();
    if (today.roomDominates()) {
      options.lining().ifPresent(this::lining);
    }
    softer(offending);
  }

  private void aim() {
    AimAdvice advice = new AimSearch(plan, matrix.order()).best(microphone.id(), options.aim());
    Direction aim = advice.best().aim();
    changed(
        RemedyKind.RE_AIM,
        microphone.aimed(aim),
        String.format(
            Locale.ROOT,
            "aim it at azimuth %.0f°, elevation %.0f°, %.1f dB of the wanted sound given up",
            aim.azimuthDeg(),
            aim.elevationDeg(),
            Math.max(advice.today().wantedDb() - advice.best().wantedDb(), 0)));
  }

  private void pattern(FloorPattern other) {
    changed(
        RemedyKind.OTHER_PATTERN,
        microphone.switchedTo(other),
        "switch it to " + other.name().id() + " where it stands");
  }

  private void closer() {
    Point3 here = microphone.position();
    Optional<FloorSource> nearest =
        plan.sources().stream()
            .filter(microphone::wants)
            .min(Comparator.comparingDouble(source -> source.position().distanceToM(here)));
    if (nearest.isEmpty()) {
      return;
    }
    Point3 there = nearest.orElseThrow().position();
    double farM = here.distanceToM(there);
    double nearM = Math.max(farM * options.closerShare(), options.leastDistanceM());
    if (nearM < farM) {
      changed(
          RemedyKind.CLOSER,
          microphone.at(here.moved(here.directionTo(there), farM - nearM)),
          String.format(
              Locale.ROOT, "move it from %.2f m to %.2f m, without turning it", farM, nearM));
    }
  }

  private void barrier(Barrier barrier, FloorSource offending) {
    Optional<Remedy> best = Optional.empty();
    for (double share : BARRIER_SHARES) {
      PlacedBarrier placed =
          PlacedBarrier.across(barrier, microphone.position(), offending.position(), share);
      FloorPlan behind = plan.plus(placed);
      if (behind.faults().isEmpty()) {
        Remedy tried =
            remedy(
                RemedyKind.BARRIER,
                offending.id(),
                String.format(
                    Locale.ROOT,
                    "put %s at (%.1f, %.1f) m, across the line to %s",
                    barrier.title(),
                    placed.xM(),
                    placed.yM(),
                    offending.title()),
                heard(behind, microphone),
                Optional.empty(),
                Optional.of(placed));
        best = best.filter(other -> other.gainDb() >= tried.gainDb()).or(() -> Optional.of(tried));
      }
    }
    best.ifPresent(this::keep);
  }

  private void lining(Lining lining) {
    keep(
        remedy(
            RemedyKind.LINING,
            "room",
            String.format(Locale.ROOT, "bring in %.0f m2 of %s", lining.areaM2(), lining.title()),
            heard(plan.in(lining.in(plan.room())), microphone),
            Optional.empty(),
            Optional.empty()));
  }

  private void softer(FloorSource offending) {
    List<FloorSource> sources =
        plan.sources().stream()
            .map(
                source ->
                    source.id().equals(offending.id())
                        ? source.louder(-options.softerDb())
                        : source)
            .toList();
    FloorPlan quieter =
        new FloorPlan(
            plan.room(), plan.equivalentBox(), sources, plan.microphones(), plan.barriers());
    keep(
        remedy(
            RemedyKind.SOFTER,
            offending.id(),
            String.format(
                Locale.ROOT, "let %s play %.0f dB softer", offending.title(), options.softerDb()),
            heard(quieter, microphone),
            Optional.empty(),
            Optional.empty()));
  }

  private void changed(RemedyKind kind, FloorMicrophone other, String what) {
    FloorPlan alone = plan.with(List.of(other));
    if (alone.faults().isEmpty()) {
      keep(
          remedy(
              kind,
              microphone.id(),
              what,
              heard(plan, other),
              Optional.of(other),
              Optional.empty()));
    }
  }

  private MicrophoneBleed heard(FloorPlan changed, FloorMicrophone standing) {
    FloorField field = new FloorField(changed, matrix.order());
    return MicrophoneBleed.of(changed, standing, BleedMatrix.row(field, standing));
  }

  private Remedy remedy(
      RemedyKind kind,
      String appliesTo,
      String what,
      MicrophoneBleed then,
      Optional<FloorMicrophone> standing,
      Optional<PlacedBarrier> barrier) {
    double isolationDb = then.isolationDb().orElse(Double.POSITIVE_INFINITY);
    return new Remedy(
        kind,
        appliesTo,
        what,
        isolationDb - today.isolationDb().orElseThrow(),
        isolationDb,
        then.wantedDirectDb(),
        standing,
        barrier);
  }

  private void keep(Remedy remedy) {
    if (remedy.gainDb() >= LEAST_GAIN_DB) {
      found.add(remedy);
    }
  }
}
