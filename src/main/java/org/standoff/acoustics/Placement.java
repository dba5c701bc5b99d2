package org.standoff.acoustics;

import java.util.Optional;

/**
 * A named place at a source where a microphone may stand.
 *
 * @param id name inside its source: {@code inside}, {@code top}, {@code spot}
 * @param title the name for people
 * @param purpose what a microphone there is for
 * @param radiator the law by which the level falls with distance there
 * @param level peak and long-term level, loud
 * @param spectrum octave shares of the radiated power, if known
 * @param directivity directivity index on the axis over frequency
 * @param wantedFromHz lowest frequency wanted there by a microphone alone, in Hz
 * @param companion what another placement in use changes, if anything
 * @param leastDistanceM nearest usual distance, in m (common practice)
 * @param mostDistanceM farthest usual distance, in m (common practice)
 * @param side which side of the moving part it looks at
 * @param airJet how strongly air moves there
 * @param overhead whether the microphone stands above people
 * @param custom what custom does there: shown for comparison, never an input to a decision
 * @param basis where the figures come from
 */
public record Placement(
    String id,
    String title,
    Purpose purpose,
    Radiator radiator,
    SourceLevel level,
    Optional<Spectrum> spectrum,
    Directivity directivity,
    double wantedFromHz,
    Optional<Companion> companion,
    double leastDistanceM,
    double mostDistanceM,
    SourceSide side,
    AirJet airJet,
    boolean overhead,
    Optional<String> custom,
    String basis) {

  /** Lowest frequency wanted there, given the purposes of the other placements in use, in Hz. */
  public double wantedFromHz(Iterable<Purpose> companionsInUse) {
    if (companion.isPresent()) {
      for (Purpose inUse : companionsInUse) {
        if (inUse == companion.get().purpose()) {
          return companion.get().wantedFromHz();
        }
      }
    }
    return wantedFromHz;
  }
}
