package org.standoff.kit.free;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.standoff.kit.Period;

/**
 * Walks along a stretch of time and asks at every change which units are there, and which groups
 * are whole.
 */
final class Sweep {

  /**
   * When one unit is there.
   *
   * @param group the matched group that it belongs to
   * @param there stretches that don't overlap
   */
  record Track(Optional<String> group, List<Period> there) {
    Track {
      there = List.copyOf(there);
    }
  }

  private final List<Track> tracks;
  private final Map<String, Integer> membersOf = new HashMap<>();
  private final Map<String, Integer> presentOf = new HashMap<>();
  private int loose;

  private Sweep(List<Track> tracks) {
    this.tracks = tracks;
    tracks.forEach(
        track -> track.group().ifPresent(name -> membersOf.merge(name, 1, Integer::sum)));
  }

  /** The longest stretches of the span throughout which what is there has the property. */
  static List<Period> where(Period span, List<Track> tracks, Predicate<Lots> property) {
    return new Sweep(tracks).walk(span, property);
  }

  private List<Period> walk(Period span, Predicate<Lots> property) {
    TreeMap<Instant, List<Step>> steps = steps(span);
    List<Period> found = new ArrayList<>();
    Instant begun = null;
    for (Map.Entry<Instant, List<Step>> at : steps.entrySet()) {
      at.getValue().forEach(this::take);
      boolean holds = at.getKey().isBefore(span.to()) && property.test(lots());
      if (holds && begun == null) {
        begun = at.getKey();
      } else if (!holds && begun != null) {
        found.add(new Period(begun, at.getKey()));
        begun = null;
      }
    }
    return found;
  }

  /** A unit comes (1) or goes (−1). */
  private record Step(Optional<String> group, int by) {}

  private TreeMap<Instant, List<Step>> steps(Period span) {
    TreeMap<Instant, List<Step>> steps = new TreeMap<>();
    steps.put(span.from(), new ArrayList<>());
    steps.put(span.to(), new ArrayList<>());
    for (Track track : tracks) {
      for (Period there : track.there()) {
        if (there.overlaps(span)) {
          Instant from = there.from().isBefore(span.from()) ? span.from() : there.from();
          Instant to = there.to().isAfter(span.to()) ? span.to() : there.to();
          step(steps, from, new Step(track.group(), 1));
          step(steps, to, new Step(track.group(), -1));
        }
      }
    }
    return steps;
  }

  private static void step(TreeMap<Instant, List<Step>> steps, Instant at, Step step) {
    steps.computeIfAbsent(at, moment -> new ArrayList<>()).add(step);
  }

  private void take(Step step) {
    if (step.group().isPresent()) {
      presentOf.merge(step.group().get(), step.by(), Integer::sum);
    } else {
      loose += step.by();
    }
  }

  private Lots lots() {
    List<Integer> whole = new ArrayList<>();
    membersOf.forEach(
        (name, members) -> {
          if (members.equals(presentOf.get(name))) {
            whole.add(members);
          }
        });
    return new Lots(loose, whole);
  }
}
