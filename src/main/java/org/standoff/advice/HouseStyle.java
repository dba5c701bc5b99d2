package org.standoff.advice;

import java.text.DecimalFormat;
import java.text.DecimalFormatSymbols;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.standoff.acoustics.Purpose;

/**
 * How a house works: its margins and what it prefers.
 *
 * @param id {@code pack/item}, or {@code inline}
 * @param title the name for people
 * @param guardedPercentile percentile of the level that must not clip, 50..99.99
 * @param wantedHeadroomDb headroom wanted at that percentile, in dB
 * @param targetPeakDbfs where the typical peak is put, in dBFS, ≤ 0
 * @param allowedFilterLossDb what a filter alone may cost at the lowest wanted note, in dB
 * @param noiseDistanceDb wanted distance of the long-term level over all noise, both in dB(A)
 * @param isolationWeight what a dB less of unwanted sound is worth, by purpose; negative where the
 *     room is wanted
 * @param evennessWeight what a dB of proximity rise at the lowest wanted note costs
 * @param surrounding what is assumed around the source when the question does not say
 */
public record HouseStyle(
    String id,
    String title,
    double guardedPercentile,
    double wantedHeadroomDb,
    double targetPeakDbfs,
    double allowedFilterLossDb,
    double noiseDistanceDb,
    Map<Purpose, Double> isolationWeight,
    double evennessWeight,
    Surrounding surrounding) {

  /**
   * What is assumed around the source.
   *
   * @param roomId id of the room
   * @param neighbourLevelDbSpl level of everything else at the microphone, diffuse, in dB SPL
   */
  public record Surrounding(Optional<String> roomId, OptionalDouble neighbourLevelDbSpl) {}

  public HouseStyle {
    isolationWeight = Map.copyOf(isolationWeight);
  }

  /** The guarded percentile in words: {@code 95th percentile}, {@code 97.5th percentile}. */
  String guardedWords() {
    return new DecimalFormat("0.##", DecimalFormatSymbols.getInstance(Locale.ROOT))
            .format(guardedPercentile)
        + "th percentile";
  }

  /** Weight of isolation for a purpose, per dB; 0 where the style names none. */
  public double isolationWeight(Purpose purpose) {
    return isolationWeight.getOrDefault(purpose, 0.0);
  }
}
