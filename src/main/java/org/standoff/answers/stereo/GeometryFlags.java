package org.standoff.answers.stereo;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import org.standoff.answers.stereo.GeometryAnswer.PairFlag;
import org.standoff.answers.stereo.GeometryAnswer.RecordingAngleLine;
import org.standoff.answers.stereo.GeometryAnswer.SourceInPair;

/** Points out what deserves a second look in an answer. */
final class GeometryFlags {
  private static final double AT_THE_SIDE_DEG = 90;

  private final List<SourceInPair> sources;
  private final RecordingAngleLine criterion;

  GeometryFlags(List<SourceInPair> sources, RecordingAngleLine criterion) {
    this.sources = sources;
    this.criterion = criterion;
  }

  List<PairFlag> all() {
    List<PairFlag> flags = new ArrayList<>();
    add(
        flags,
        "opposite-polarity",
        SourceInPair::oppositePolarity,
        "reaches left and right in opposite polarity: hard to place, and thin in mono");
    add(
        flags,
        "inverted-polarity",
        source -> source.channels().stream().allMatch(one -> one.polarity().equals("inverted")),
        "is heard by rear lobes alone: polarity turned over, left and right changed");
    add(
        flags,
        "behind-the-pair",
        GeometryFlags::isBehind,
        "stands behind the pair: its image folds to the front");
    add(
        flags,
        "outside-recording-angle",
        this::isOutside,
        String.format(
            Locale.ROOT,
            "stands outside the recording angle by %s: its image stays at the loudspeaker",
            criterion.model()));
    add(
        flags,
        "rejection-capped",
        source -> source.channels().stream().anyMatch(one -> one.rejectionCapped()),
        "lies near a null: the cap on rejection, not the pattern, gives the level difference");
    if (criterion.totalDeg().isEmpty()) {
      flags.add(
          new PairFlag(
              "no-recording-angle",
              List.of(),
              String.format(
                  Locale.ROOT,
                  "by %s no direction puts an image at a loudspeaker on both sides",
                  criterion.model())));
    }
    return flags;
  }

  private boolean isOutside(SourceInPair source) {
    double azimuthDeg = source.azimuthDeg();
    return !isBehind(source)
        && criterion.leftDeg().isPresent()
        && criterion.rightDeg().isPresent()
        && (azimuthDeg > criterion.leftDeg().getAsDouble()
            || -azimuthDeg > criterion.rightDeg().getAsDouble());
  }

  private static boolean isBehind(SourceInPair source) {
    return Math.abs(source.azimuthDeg()) > AT_THE_SIDE_DEG;
  }

  private void add(
      List<PairFlag> flags, String code, Predicate<SourceInPair> holds, String detail) {
    List<String> which = sources.stream().filter(holds).map(SourceInPair::id).toList();
    if (!which.isEmpty()) {
      flags.add(new PairFlag(code, which, String.join(", ", which) + " " + detail));
    }
  }
}
