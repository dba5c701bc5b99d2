package org.standoff.floor;

import java.util.List;
import org.standoff.acoustics.Level;

/** Daily noise exposure level LEX,8h of ISO 1999 and Directive 2003/10/EC, article 2. */
public final class DailyExposure {
  private static final double NOMINAL_DAY_H = 8;

  private DailyExposure() {}

  /** 10 lg(Σ t 10^(L/10)/8 h) in dB(A); −∞ for no exposure. */
  public static double levelDba(List<Exposure> exposures) {
    return Level.energySum(
        exposures.stream()
            .mapToDouble(
                exposure ->
                    exposure.levelDba() + Level.ofPowerRatio(exposure.hours() / NOMINAL_DAY_H))
            .toArray());
  }
}
