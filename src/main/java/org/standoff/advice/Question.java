package org.standoff.advice;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Placement;
import org.standoff.acoustics.Purpose;
import org.standoff.acoustics.SoundPower;
import org.standoff.acoustics.SourceLevel;
import org.standoff.chain.Preamp;

/**
 * A question with everything resolved: which settings, for this placement of a source, here?
 *
 * @param placement the placement
 * @param level the level as played: dynamic, offsets and told figures are in it
 * @param power the source's sound power as played, if known
 * @param positions where the microphone stands; two for a pair on one gain
 * @param companions purposes of the other placements of the source that are in use
 * @param preamp the preamp and its converter
 * @param inLinePadsDb pads for the lead that are at hand, in dB
 * @param phantom what is known of phantom on the line
 * @param surroundings what is around
 * @param air the air
 * @param style how the house works
 */
public record Question(
    Placement placement,
    SourceLevel level,
    Optional<SoundPower> power,
    List<Position> positions,
    List<Purpose> companions,
    Preamp preamp,
    List<Double> inLinePadsDb,
    LinePhantom phantom,
    Surroundings surroundings,
    Air air,
    HouseStyle style) {

  public Question {
    positions = List.copyOf(positions);
    companions = List.copyOf(companions);
    inLinePadsDb = List.copyOf(inLinePadsDb);
    if (positions.isEmpty() || positions.size() > 2) {
      throw new IllegalArgumentException("one position, or two for a pair");
    }
  }

  /** Lowest frequency wanted, given the companions in use, in Hz. */
  public double wantedFromHz() {
    return placement.wantedFromHz(companions);
  }

  /** The same in words: "180 Hz", "41.2 Hz". */
  String wantedFromWords() {
    BigDecimal hertz = BigDecimal.valueOf(wantedFromHz()).setScale(1, RoundingMode.HALF_UP);
    return hertz.stripTrailingZeros().toPlainString() + " Hz";
  }

  /** The same question with the microphone elsewhere. */
  public Question at(List<Position> others) {
    return new Question(
        placement,
        level,
        power,
        others,
        companions,
        preamp,
        inLinePadsDb,
        phantom,
        surroundings,
        air,
        style);
  }
}
