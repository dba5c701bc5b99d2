package org.standoff.pairs.listening;

/**
 * Two straight regions: s = a·dL + b·dt up to the knee, and only a share of what is beyond it. Form
 * after Lee and Rumsey, Journal of the AES 61 (2013), who found two linear regions.
 *
 * @param levelPctPerDb a > 0
 * @param timePctPerMs b > 0
 * @param kneePct where the first region ends, above 0
 * @param shareBeyond slope of the second region against the first, above 0
 */
public record TwoRegion(
    Study study, double levelPctPerDb, double timePctPerMs, double kneePct, double shareBeyond)
    implements ListeningModel {
  public TwoRegion {
    Figure.aboveZero("the level factor", levelPctPerDb);
    Figure.aboveZero("the time factor", timePctPerMs);
    Figure.aboveZero("the knee", kneePct);
    Figure.aboveZero("the share beyond the knee", shareBeyond);
  }

  @Override
  public double sidewaysPct(double levelDb, double timeMs) {
    double straight = levelPctPerDb * levelDb + timePctPerMs * timeMs;
    double beyond = Math.max(Math.abs(straight) - kneePct, 0);
    return Math.copySign(Math.min(Math.abs(straight), kneePct) + shareBeyond * beyond, straight);
  }
}
