package org.standoff.pairs.listening;

/**
 * One straight line from the middle to each end: s = 100 (dL/dL₁ + dt/dt₁). Coarse; it needs only
 * the two differences that alone put the image at the loudspeaker.
 *
 * @param sideLevelDb dL₁ > 0
 * @param sideTimeMs dt₁ > 0
 */
public record StraightTrade(Study study, double sideLevelDb, double sideTimeMs)
    implements ListeningModel {
  public StraightTrade {
    Figure.aboveZero("the level at the side", sideLevelDb);
    Figure.aboveZero("the time at the side", sideTimeMs);
  }

  @Override
  public double sidewaysPct(double levelDb, double timeMs) {
    return SIDE_PCT * (levelDb / sideLevelDb + timeMs / sideTimeMs);
  }
}
