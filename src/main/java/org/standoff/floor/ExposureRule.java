package org.standoff.floor;

import java.util.List;

/**
 * Published rules for a day's noise dose. Each answers for itself; they are never averaged. Advice,
 * not law: local codes and licensed people decide.
 */
public enum ExposureRule {
  /** NIOSH recommended exposure limit: 85 dB(A) for 8 h, 3 dB exchange (publication 98-126). */
  NIOSH_REL("niosh-rel", 85, 3),
  /** OSHA permissible exposure limit: 90 dB(A) for 8 h, 5 dB exchange (29 CFR 1910.95). */
  OSHA_PEL("osha-pel", 90, 5);

  private static final double CRITERION_H = 8;

  private final String id;
  private final double criterionDba;
  private final double exchangeDb;

  ExposureRule(String id, double criterionDba, double exchangeDb) {
    this.id = id;
    this.criterionDba = criterionDba;
    this.exchangeDb = exchangeDb;
  }

  /** The name in answers. */
  public String id() {
    return id;
  }

  /** Level that is allowed for 8 h. */
  public double criterionDba() {
    return criterionDba;
  }

  /** Rise of level that halves the allowed time. */
  public double exchangeDb() {
    return exchangeDb;
  }

  /** Allowed time in hours, 8/2^((L − Lc)/q); ∞ for silence. */
  public double allowedHours(double levelDba) {
    return CRITERION_H / Math.pow(2, (levelDba - criterionDba) / exchangeDb);
  }

  /** Dose in per cent of the allowed day, 100 Σ C/T; 0 for no exposure. */
  public double dosePercent(List<Exposure> exposures) {
    return exposures.stream()
        .mapToDouble(exposure -> 100 * exposure.hours() / allowedHours(exposure.levelDba()))
        .sum();
  }
}
