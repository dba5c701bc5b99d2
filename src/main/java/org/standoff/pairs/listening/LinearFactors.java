package org.standoff.pairs.listening;

/**
 * Shifts by level and time add, each in proportion: s = a·dL + b·dt. Form of Wittek and Theile, AES
 * preprint 5568 (2002), meant for the quasi-linear region of {@link Study#meantUpToPct}.
 *
 * @param levelPctPerDb a > 0
 * @param timePctPerMs b > 0
 */
public record LinearFactors(Study study, double levelPctPerDb, double timePctPerMs)
    implements ListeningModel {
  public LinearFactors {
    Figure.aboveZero("the level factor", levelPctPerDb);
    Figure.aboveZero("the time factor", timePctPerMs);
  }

  @Override
  public double sidewaysPct(double levelDb, double timeMs) {
    return levelPctPerDb * levelDb + timePctPerMs * timeMs;
  }
}
