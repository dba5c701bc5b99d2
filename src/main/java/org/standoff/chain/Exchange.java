package org.standoff.chain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Polar;

/**
 * What changes when one microphone stands in for another, figure by figure from their sheets. Every
 * pattern of the wanted one is held against the nearest of the other, and the worst of them is
 * told.
 *
 * @param maximumChangeDb change of the level that it bears with the pads out, in dB; less is a loss
 * @param limitChangeDb change of the level that it bears with whatever pads it has, in dB
 * @param selfNoiseChangeDb greatest rise of its own noise, in dB; more is a loss
 * @param sensitivityChangeDb change of what it gives out, in dB; the gain makes up for it
 * @param lacks patterns of the wanted one that it does not have
 */
public record Exchange(
    double maximumChangeDb,
    double limitChangeDb,
    double selfNoiseChangeDb,
    double sensitivityChangeDb,
    List<Lack> lacks) {

  /** Half of the way from one named pattern to the next, in parts of the omni coefficient. */
  private static final double SAME_WITHIN = 0.06;

  /** Least lost first: patterns, then decibels of limit and noise, then the gain to be changed. */
  public static final Comparator<Exchange> LEAST_LOST_FIRST =
      Comparator.<Exchange>comparingInt(exchange -> exchange.lacks().size())
          .thenComparingDouble(Exchange::lostDb)
          .thenComparingDouble(exchange -> Math.abs(exchange.sensitivityChangeDb()));

  /**
   * A pattern that is not there.
   *
   * @param pattern the one that is lacking
   * @param nearest the nearest that is there
   * @param directivityChangeDb change of the directivity index from the one to the other, in dB;
   *     less hears more of the room
   * @param distanceRatio of the distance at which the nearest one hears the same share of a diffuse
   *     field to the planned one: the ratio of their distance factors (Eargle, The Microphone Book,
   *     from memory)
   */
  public record Lack(
      PatternName pattern, PatternName nearest, double directivityChangeDb, double distanceRatio) {}

  public Exchange {
    lacks = List.copyOf(lacks);
  }

  /** What changes when {@code other} stands in for {@code wanted}. */
  public static Exchange of(Microphone wanted, Microphone other) {
    List<Lack> lacks = new ArrayList<>();
    double noiseChangeDb = Double.NEGATIVE_INFINITY;
    double sensitivityChangeDb = 0;
    for (PatternFigures pattern : wanted.patterns()) {
      PatternFigures nearest = nearest(wanted, pattern, other);
      if (distance(pattern.polar(), nearest.polar()) > SAME_WITHIN) {
        lacks.add(
            new Lack(
                pattern.name(),
                nearest.name(),
                nearest.polar().directivityIndexDb() - pattern.polar().directivityIndexDb(),
                nearest.polar().distanceFactor() / pattern.polar().distanceFactor()));
      }
      noiseChangeDb = Math.max(noiseChangeDb, noiseChangeDb(wanted, pattern, other, nearest));
      double sensitivity = sensitivityChangeDb(pattern, nearest);
      if (Math.abs(sensitivity) > Math.abs(sensitivityChangeDb)) {
        sensitivityChangeDb = sensitivity;
      }
    }
    return new Exchange(
        other.bears(Pad.OUT).db() - wanted.bears(Pad.OUT).db(),
        other.bearsAtMost().db() - wanted.bearsAtMost().db(),
        noiseChangeDb,
        sensitivityChangeDb,
        lacks);
  }

  /** Decibels of limit and of distance to the noise that are lost together; gains don't count. */
  public double lostDb() {
    return Math.max(0, -limitChangeDb) + Math.max(0, selfNoiseChangeDb);
  }

  /** The nearest in shape; of several outputs with the same shape the one most like it. */
  private static PatternFigures nearest(
      Microphone wanted, PatternFigures pattern, Microphone other) {
    return other.patterns().stream()
        .min(
            Comparator.<PatternFigures>comparingDouble(
                    figures -> distance(pattern.polar(), figures.polar()))
                .thenComparingDouble(figures -> Math.abs(sensitivityChangeDb(pattern, figures)))
                .thenComparingDouble(
                    figures -> Math.abs(noiseChangeDb(wanted, pattern, other, figures))))
        .orElseThrow();
  }

  private static double sensitivityChangeDb(PatternFigures pattern, PatternFigures nearest) {
    return Level.ofAmplitudeRatio(nearest.sensitivityMvPerPa() / pattern.sensitivityMvPerPa());
  }

  private static double noiseChangeDb(
      Microphone wanted, PatternFigures pattern, Microphone other, PatternFigures nearest) {
    return LineNoise.ownDba(other, nearest) - LineNoise.ownDba(wanted, pattern);
  }

  /** A boundary hears half of all directions: no free-standing pattern is like it. */
  private static double distance(Polar one, Polar other) {
    double parts = Math.abs(one.omniPart() - other.omniPart());
    return one.halfSpace() == other.halfSpace() ? parts : parts + 1;
  }
}
