package org.standoff.floor;

import java.util.List;

/**
 * Which microphones to lay against each other.
 *
 * @param plan the floor
 * @param sourceId the source whose arrivals count
 * @param microphoneIds at least one
 * @param pairIds those of them that later arrivals are laid against (overheads, a room pair); may
 *     be empty
 * @param sampleRateHz above 0
 * @param extraMs by how much the pair leads in {@link DelayStrategy#TO_PAIR_PLUS}, ≥ 0
 * @param coldestC lowest temperature of the day
 * @param warmestC highest temperature of the day
 */
public record AlignmentQuestion(
    FloorPlan plan,
    String sourceId,
    List<String> microphoneIds,
    List<String> pairIds,
    double sampleRateHz,
    double extraMs,
    double coldestC,
    double warmestC) {
  public AlignmentQuestion {
    microphoneIds = List.copyOf(microphoneIds);
    pairIds = List.copyOf(pairIds);
    if (microphoneIds.isEmpty() || !microphoneIds.containsAll(pairIds)) {
      throw new IllegalArgumentException(
          "an alignment takes at least one microphone, the pair among them: "
              + microphoneIds
              + ", "
              + pairIds);
    }
    if (!(sampleRateHz > 0 && extraMs >= 0 && warmestC >= coldestC)) {
      throw new IllegalArgumentException(
          "the rate is above 0 Hz, the lead 0 ms or more, the warmest not under the coldest: "
              + sampleRateHz
              + " Hz, "
              + extraMs
              + " ms, "
              + coldestC
              + " to "
              + warmestC
              + " °C");
    }
  }
}
