package org.standoff.answers.floor;

import java.util.List;
import java.util.Locale;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Validity;
import org.standoff.advice.Caution;
import org.standoff.advice.Cautions;
import org.standoff.answers.AnswerContext;
import org.standoff.answers.Basis;
import org.standoff.answers.References;
import org.standoff.floor.ExposureReport;
import org.standoff.floor.FloorMicrophone;

/** What answers about a floor have in common around their figures. */
final class FloorBasis {
  /** A floor of a thousand cells would drown its answer in doubts. */
  private static final int MOST_OF_A_CODE = 12;

  private FloorBasis() {}

  static Basis of(
      AnswerContext context, References references, ResolvedFloor floor, List<Validity> validity) {
    Air air = floor.plan().room().air();
    return new Basis(
        references.catalogue().revision(),
        context.engineVersion(),
        air.speedOfSoundMPerS(),
        air.speedLaw(),
        floor.assumptions().told(),
        ResolvedFloor.gathered(validity, MOST_OF_A_CODE),
        List.of(
            String.format(
                Locale.ROOT,
                "how loud these players play: one differs by ± %.0f dB (5th to 95th percentile,"
                    + " assumed), so a word with the loudest moves the answer most",
                ExposureReport.PLAYER_SPREAD_DB),
            "what real sources do off their axis: the directivity is a smooth lobe without side"
                + " lobes",
            "bodies, music stands and furniture in between, and single modes of the room"));
  }

  static List<Caution> cautions(ResolvedFloor floor) {
    return floor.plan().microphones().stream()
        .map(FloorMicrophone::position)
        .mapToDouble(position -> position.zM())
        .max()
        .stream()
        .mapToObj(Cautions::ofStand)
        .flatMap(List::stream)
        .toList();
  }
}
