package org.standoff.answers.stereo;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.standoff.acoustics.PatternName;
import org.standoff.answers.stereo.StereoFitAnswer.UnfitPair;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.PairParameters;
import org.standoff.pairs.fit.WhyNot;

/** Represents why layouts can't do what was wished. */
final class UnfitViews {
  private final List<PairLayout> layouts;

  UnfitViews(List<PairLayout> layouts) {
    this.layouts = layouts;
  }

  UnfitPair of(WhyNot reason) {
    return new UnfitPair(
        reason.layoutId(),
        reason.code(),
        reason.detail(),
        pattern(reason).map(PatternName::id),
        reason instanceof WhyNot.MonoLoss loss ? Optional.of(loss.playerId()) : Optional.empty(),
        new TreeMap<>(figures(reason)),
        reason instanceof WhyNot.SpanOutOfReach span
            ? measures(span.layoutId(), span.nearest())
            : Map.of());
  }

  private static Optional<PatternName> pattern(WhyNot reason) {
    if (reason instanceof WhyNot.SpanOutOfReach span) {
      return Optional.of(span.pattern());
    }
    if (reason instanceof WhyNot.MonoLoss loss) {
      return Optional.of(loss.pattern());
    }
    return reason instanceof WhyNot.RoomOutOfRange room
        ? Optional.of(room.pattern())
        : Optional.empty();
  }

  private static Map<String, Double> figures(WhyNot reason) {
    if (reason instanceof WhyNot.SpanOutOfReach span) {
      return Map.of(
          "reached_pct", span.reachedPct(),
          "wished_pct", span.wishedPct(),
          "distance_m", span.distanceM());
    }
    if (reason instanceof WhyNot.MonoLoss loss) {
      return Map.of("loss_db", loss.lossDb(), "allowed_loss_db", loss.allowedDb());
    }
    if (reason instanceof WhyNot.RoomOutOfRange room) {
      return Map.of(
          "direct_to_reverberant_db", room.nearestDb(),
          "least_db", room.leastDb(),
          "most_db", room.mostDb());
    }
    if (reason instanceof WhyNot.BarTooShort bar) {
      return Map.of("least_spacing_m", bar.leastSpacingM(), "bar_most_m", bar.barMostM());
    }
    if (reason instanceof WhyNot.PlayerOnCapsule on) {
      return Map.of("distance_m", on.distanceM());
    }
    if (reason instanceof WhyNot.AllBehind behind) {
      return Map.of("players_count", (double) behind.players());
    }
    return reason instanceof WhyNot.NoMicrophones few
        ? Map.of("needed_count", (double) few.needed())
        : Map.of();
  }

  private Map<String, Double> measures(String layoutId, PairParameters nearest) {
    return layouts.stream()
        .filter(layout -> layout.id().equals(layoutId))
        .findFirst()
        .map(layout -> PairViews.measures(layout, nearest))
        .orElse(Map.of());
  }
}
