package org.standoff.advice;

import org.standoff.acoustics.LateField;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Polar;
import org.standoff.acoustics.Room;
import org.standoff.acoustics.SoundPower;

/**
 * What a pattern hears of everything but the wanted direct sound. Neighbours come directly, through
 * the pattern at their angle, and through the room; a diffuse field comes through the pattern's
 * random-energy efficiency. All sums are of energy.
 */
final class Hearing {
  private Hearing() {}

  /**
   * Level of everything unwanted as an on-axis level of the microphone, in dB SPL, rms.
   *
   * @param polar the pattern
   * @param rejectionCapDb deepest rejection that is believed, in dB
   * @param around what is around
   * @return −∞ where nothing is around
   */
  static double unwantedDb(Polar polar, double rejectionCapDb, Surroundings around) {
    double energy = 0;
    if (around.diffuseDbSpl().isPresent()) {
      energy += diffuse(polar, around.diffuseDbSpl().getAsDouble());
    }
    for (Neighbour neighbour : around.neighbours()) {
      energy += Level.powerRatio(neighbourDb(neighbour, polar, rejectionCapDb, around));
    }
    return Level.ofPowerRatio(energy);
  }

  /** One neighbour, direct and late, in dB SPL as an on-axis level. */
  static double neighbourDb(
      Neighbour neighbour, Polar polar, double rejectionCapDb, Surroundings around) {
    double direct = directDb(neighbour, polar, rejectionCapDb);
    if (around.room().isEmpty() || neighbour.power().isEmpty()) {
      return direct;
    }
    return Level.energySum(direct, lateDb(neighbour.power().get(), polar, around.room().get()));
  }

  /** The direct sound of a neighbour through the pattern, in dB SPL. */
  static double directDb(Neighbour neighbour, Polar polar, double rejectionCapDb) {
    return neighbour.direct().db() + polar.levelDbCapped(neighbour.angleDeg(), rejectionCapDb);
  }

  /**
   * The late field of a source through the pattern, in dB SPL: mid octaves, no reflections apart.
   */
  static double lateDb(SoundPower power, Polar polar, Room room) {
    return LateField.levelDb(power.db(), room.midAbsorptionAreaM2(), room.surfaceM2(), 0)
        - polar.directivityIndexDb();
  }

  private static double diffuse(Polar polar, double levelDb) {
    return Level.powerRatio(levelDb) * polar.randomEnergyEfficiency();
  }
}
