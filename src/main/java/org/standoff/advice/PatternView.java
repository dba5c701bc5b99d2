package org.standoff.advice;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Polar;
import org.standoff.chain.Microphone;
import org.standoff.chain.PatternFigures;
import org.standoff.chain.PatternRise;

/**
 * One pattern of a microphone in the place of the question: all that does not depend on pads,
 * filters and gain.
 *
 * @param outputId output of the body
 * @param pattern its figures
 * @param rises what it adds to the peak, position by position
 * @param proximityDb proximity rise per octave at the first position, in dB
 * @param riseAtLowestDb proximity rise at the lowest wanted note, the largest of the positions, dB
 * @param isolationDb how much less of the unwanted it hears than an omni would, in dB
 * @param unwantedDb what it hears of the unwanted, as an on-axis level; −∞ where nothing is around
 * @param aimLossDb what the source loses by lying off its axis, at the first position, in dB, ≥ 0
 */
public record PatternView(
    String outputId,
    PatternFigures pattern,
    List<PatternRise> rises,
    Octaves proximityDb,
    double riseAtLowestDb,
    double isolationDb,
    double unwantedDb,
    double aimLossDb) {

  static PatternView of(
      Question question,
      List<Arrival> arrivals,
      Microphone microphone,
      String outputId,
      PatternFigures pattern) {
    Polar polar = pattern.polar();
    List<PatternRise> rises = new ArrayList<>(arrivals.size());
    Octaves proximity = null;
    double atLowest = Double.NEGATIVE_INFINITY;
    double speed = question.air().speedOfSoundMPerS();
    for (Arrival arrival : arrivals) {
      Octaves here = proximity(question, arrival, pattern, speed);
      if (proximity == null) {
        proximity = here;
      }
      double aimDb =
          polar.levelDbCapped(arrival.position().aimOffDeg(), microphone.rejectionCapDb());
      rises.add(
          arrival
              .shares()
              .map(shares -> PatternRise.of(shares, here, microphone.onAxisResponseDb()))
              .orElse(PatternRise.NOT_COUNTED)
              .aimedOff(aimDb));
      double lowest = proximityDb(question, arrival, polar, question.wantedFromHz(), speed);
      atLowest = Math.max(atLowest, lowest);
    }
    double cap = microphone.rejectionCapDb();
    double unwanted = Hearing.unwantedDb(polar, cap, question.surroundings());
    return new PatternView(
        outputId,
        pattern,
        List.copyOf(rises),
        Objects.requireNonNull(proximity),
        atLowest,
        isolationDb(polar, unwanted, question.surroundings(), cap),
        unwanted,
        Math.abs(polar.levelDbCapped(arrivals.get(0).position().aimOffDeg(), cap)));
  }

  private static double isolationDb(
      Polar polar, double unwantedDb, Surroundings around, double cap) {
    if (unwantedDb == Double.NEGATIVE_INFINITY) {
      return polar.directivityIndexDb();
    }
    return Hearing.unwantedDb(PatternName.OMNI.ideal(), cap, around) - unwantedDb;
  }

  private static Octaves proximity(
      Question question, Arrival arrival, PatternFigures pattern, double speedMPerS) {
    double[] rise = new double[Octave.COUNT];
    for (Octave octave : Octave.all()) {
      Polar polar =
          pattern.omniPartPerOctave().isPresent()
              ? Polar.firstOrder(pattern.omniPartPerOctave().get().get(octave))
              : pattern.polar();
      rise[octave.ordinal()] = proximityDb(question, arrival, polar, octave.midHz(), speedMPerS);
    }
    return Octaves.of(rise);
  }

  private static double proximityDb(
      Question question, Arrival arrival, Polar polar, double hz, double speedMPerS) {
    if (polar.gradientPart() == 0) {
      return 0;
    }
    double cosAim = Math.cos(Math.toRadians(arrival.position().aimOffDeg()));
    return question
        .placement()
        .radiator()
        .proximityDb(polar, cosAim, arrival.position().distanceM(), hz, speedMPerS);
  }
}
