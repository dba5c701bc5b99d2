package org.standoff.pairs.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standoff.acoustics.PatternName;
import org.standoff.pairs.CapsulePlan;
import org.standoff.pairs.PairLayout;

/**
 * A layout in one pattern, with every set of microphones that gives exactly that: solved once,
 * however many models share the figures.
 *
 * @param sets matched ones first, else in the order at hand
 */
record Candidate(
    PairLayout layout, PatternChoice pattern, double rejectionCapDb, List<MicrophoneSet> sets) {

  /** What makes two microphones the same to the arithmetic. */
  private record Alike(PatternChoice pattern, double rejectionCapDb) {}

  /** All candidates of a layout; empty when nothing at hand makes it. */
  static List<Candidate> of(PairLayout layout, List<AtHand> microphones) {
    Map<Alike, List<MicrophoneSet>> sets = new LinkedHashMap<>();
    for (AtHand microphone : microphones) {
      for (PatternChoice pattern : microphone.patterns()) {
        if (layout.patterns().contains(pattern.name())) {
          set(layout, microphone, microphones)
              .ifPresent(
                  set ->
                      sets.computeIfAbsent(
                              new Alike(pattern, microphone.rejectionCapDb()),
                              alike -> new ArrayList<>())
                          .add(set));
        }
      }
    }
    return sets.entrySet().stream()
        .map(
            entry ->
                new Candidate(
                    layout,
                    entry.getKey().pattern(),
                    entry.getKey().rejectionCapDb(),
                    entry.getValue().stream()
                        .sorted(Comparator.comparing(set -> !set.matched()))
                        .toList()))
        .toList();
  }

  /** How many open capsules a layout has: these must be alike. */
  static int alikeNeeded(PairLayout layout) {
    return (int) layout.capsules().stream().filter(plan -> plan.pattern().isEmpty()).count();
  }

  private static Optional<MicrophoneSet> set(
      PairLayout layout, AtHand open, List<AtHand> microphones) {
    int alike = alikeNeeded(layout);
    if (layout.matrixed() && open.midSideBody()) {
      return Optional.of(new MicrophoneSet(List.of(open.microphoneId()), true));
    }
    if (open.count() < alike || open.midSideBody()) {
      return Optional.empty();
    }
    List<String> ids = new ArrayList<>();
    for (CapsulePlan plan : layout.capsules()) {
      if (plan.pattern().isEmpty()) {
        ids.add(open.microphoneId());
      } else {
        Optional<String> other = other(plan.pattern().get(), open, alike, microphones);
        if (other.isEmpty()) {
          return Optional.empty();
        }
        ids.add(other.get());
      }
    }
    return Optional.of(new MicrophoneSet(ids, open.matched() || alike < 2));
  }

  private static Optional<String> other(
      PatternName fixed, AtHand open, int inUse, List<AtHand> microphones) {
    return microphones.stream()
        .filter(one -> one.has(fixed) && !one.midSideBody())
        .filter(one -> !one.equals(open) || one.count() > inUse)
        .map(AtHand::microphoneId)
        .findFirst();
  }
}
