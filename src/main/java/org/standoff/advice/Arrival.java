package org.standoff.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standoff.acoustics.AWeighting;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.Placement;
import org.standoff.acoustics.Radiator;
import org.standoff.acoustics.RmsSpl;
import org.standoff.acoustics.SourceLevel;
import org.standoff.acoustics.Spectrum;
import org.standoff.acoustics.UncertainDb;
import org.standoff.acoustics.Validity;

/**
 * What reaches the capsule from the wanted source, direct and before any microphone.
 *
 * @param position where the microphone stands
 * @param peak highest instantaneous peak, with the spreads of player and distance
 * @param longTerm long-term level, rms
 * @param longTermDba the same, A-weighted by the spectrum; unweighted where that is unknown
 * @param shares octave shares of the pressure's energy, if the spectrum is known
 */
public record Arrival(
    Position position,
    UncertainDb peak,
    RmsSpl longTerm,
    double longTermDba,
    Optional<Octaves> shares) {
  /**
   * What is left of a source behind it, in dB re its axis. Its pattern would fall silent there;
   * nothing that sounds does, and a share of nothing is no number.
   */
  private static final double LEAST_OFF_AXIS_DB = -60;

  /**
   * What arrives at a position.
   *
   * @param placement the placement of the source
   * @param level its level as played
   * @param position where it is heard
   */
  public static Arrival of(Placement placement, SourceLevel level, Position position) {
    Radiator radiator = placement.radiator();
    double atM = level.atM();
    double z = position.distanceM();
    Optional<Octaves> shares = Optional.empty();
    double offAxisDb = 0;
    double aWeightingDb = 0;
    if (placement.spectrum().isPresent()) {
      Octaves heard = heardShares(placement.spectrum().get(), placement, position.angleDeg());
      double energy = sum(heard);
      offAxisDb = Level.ofPowerRatio(energy);
      shares = Optional.of(heard.map(share -> share / energy));
      aWeightingDb = weightingDb(shares.get());
    }
    double changeDb = radiator.levelChangeDb(atM, z) + offAxisDb;
    UncertainDb peak =
        level.peak().plus(changeDb).with(new UncertainDb(0, distanceSpreadDb(radiator, position)));
    RmsSpl longTerm = level.longTerm().plus(changeDb);
    return new Arrival(position, peak, longTerm, longTerm.db() + aWeightingDb, shares);
  }

  /** What arrives at another distance on the same line: the spectrum is the same. */
  Arrival at(Placement placement, SourceLevel level, double distanceM) {
    Radiator radiator = placement.radiator();
    Position there = position.at(distanceM);
    double changeDb = radiator.levelChangeDb(position.distanceM(), distanceM);
    double spreadDb = Math.hypot(level.peak().spreadDb(), distanceSpreadDb(radiator, there));
    return new Arrival(
        there,
        new UncertainDb(peak.typicalDb() + changeDb, spreadDb),
        longTerm.plus(changeDb),
        longTermDba + changeDb,
        shares);
  }

  private static Octaves heardShares(Spectrum spectrum, Placement placement, double angleDeg) {
    Octaves onAxis = spectrum.onAxisShares(placement.directivity());
    if (angleDeg == 0) {
      return onAxis;
    }
    double[] heard = onAxis.toArray();
    for (Octave octave : Octave.all()) {
      if (heard[octave.ordinal()] > 0) {
        double offAxisDb = placement.directivity().offAxisDb(octave.midHz(), angleDeg);
        heard[octave.ordinal()] *= Level.powerRatio(Math.max(offAxisDb, LEAST_OFF_AXIS_DB));
      }
    }
    return Octaves.of(heard);
  }

  private static double sum(Octaves shares) {
    double sum = 0;
    for (double share : shares.toArray()) {
      sum += share;
    }
    return sum;
  }

  private static double weightingDb(Octaves shares) {
    double sum = 0;
    for (Octave octave : Octave.all()) {
      double share = shares.get(octave);
      if (share > 0) {
        sum += share * Level.powerRatio(AWeighting.db(octave.midHz()));
      }
    }
    return Level.ofPowerRatio(sum);
  }

  /** Half of the level's range while the distance runs through its own. */
  private static double distanceSpreadDb(Radiator radiator, Position position) {
    double spread = position.distanceSpreadM();
    if (spread == 0) {
      return 0;
    }
    double z = position.distanceM();
    double nearest = Math.max(z - spread, z / 2);
    return radiator.levelChangeDb(z + spread, nearest) / 2;
  }

  /** Where a law is used outside its range at a position. */
  public static List<Validity> validity(Question question, Position position) {
    Placement placement = question.placement();
    double highestHz = placement.spectrum().map(Spectrum::highestHz).orElse(Octave.HZ_1K.midHz());
    List<Validity> found =
        new ArrayList<>(
            placement
                .radiator()
                .validity(position.distanceM(), highestHz, question.air().speedOfSoundMPerS()));
    if (position.angleDeg() > 0 && position.distanceM() < placement.radiator().radiusM()) {
      found.add(
          new Validity(
              "directivity-in-near-field",
              "nearer than the source's radius its directivity does not hold: the level off the"
                  + " axis is assumed"));
    }
    return List.copyOf(found);
  }
}
