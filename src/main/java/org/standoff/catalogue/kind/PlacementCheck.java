package org.standoff.catalogue.kind;

import java.util.Locale;
import org.standoff.catalogue.CheckScope;
import org.standoff.catalogue.Sheet;

/** Tells where the figures of a placement contradict each other. */
final class PlacementCheck {

  /** Percentiles are read as those of a normal in dB, and sheets are rounded to whole dB. */
  private static final double SYMMETRY_DB = 1;

  private PlacementCheck() {}

  static void check(String place, Sheet placement, CheckScope scope) {
    Sheet peak = placement.object("level", level -> level.object("peak_db_spl", p -> p));
    double below = peak.number("typical") - peak.number("low");
    double above = peak.number("high") - peak.number("typical");
    String peakPlace = place + "/level/peak_db_spl";
    if (!(below > 0 && above > 0)) {
      scope.fault(peakPlace, figures(peak), "low below typical and typical below high");
    } else if (Math.abs(below - above) > SYMMETRY_DB) {
      scope.fault(
          peakPlace, figures(peak), "low and high as far from typical as each other, within 1 dB");
    }
    ordered(place + "/distance_m", placement, "distance_m", "least", "most", scope);
    if (placement.has("spectrum")) {
      ordered(place + "/spectrum", placement, "spectrum", "lowest_hz", "highest_hz", scope);
    }
  }

  private static void ordered(
      String place, Sheet placement, String name, String low, String high, CheckScope scope) {
    Sheet range = placement.object(name, sheet -> sheet);
    if (range.number(low) > range.number(high)) {
      scope.fault(
          place,
          low + " " + range.number(low) + ", " + high + " " + range.number(high),
          low + " not above " + high);
    }
  }

  private static String figures(Sheet peak) {
    return String.format(
        Locale.ROOT,
        "%.1f, %.1f, %.1f",
        peak.number("low"),
        peak.number("typical"),
        peak.number("high"));
  }
}
