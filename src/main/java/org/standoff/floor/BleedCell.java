package org.standoff.floor;

import org.standoff.acoustics.Level;

/**
 * What one microphone hears of one source. Levels are as its pattern hears them, re its axis; gain
 * and fader are not in them.
 *
 * @param microphoneId id of the microphone
 * @param sourceId id of the source
 * @param pathM from the source's reference point to the capsule
 * @param arrivalMs after which the direct sound arrives
 * @param microphoneAngleDeg how far off the microphone's axis the source is, 0 to 180
 * @param sourceAngleDeg how far off the source's axis the microphone is, 0 to 180
 * @param inverted whether the pattern's rear lobe turns the direct sound's polarity over
 * @param direct direct sound, behind barriers
 * @param reflections image sources up to the order asked for; never shielded
 * @param late what is left of the field after them, through the random-energy efficiency
 */
public record BleedCell(
    String microphoneId,
    String sourceId,
    double pathM,
    double arrivalMs,
    double microphoneAngleDeg,
    double sourceAngleDeg,
    boolean inverted,
    OctaveEnergies direct,
    OctaveEnergies reflections,
    OctaveEnergies late) {

  /** Reflections and late field: what no aim and no barrier can shut out. */
  public OctaveEnergies room() {
    return reflections.plus(late);
  }

  /** All of it. */
  public OctaveEnergies total() {
    return direct.plus(reflections).plus(late);
  }

  /** Direct sound over room in dB, over all octaves; NaN for a silent source. */
  public double directOverRoomDb() {
    return Level.ofPowerRatio(direct.sum() / (reflections.sum() + late.sum()));
  }
}
