package org.standoff.shipped;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.standoff.acoustics.Directivity;
import org.standoff.acoustics.Level;
import org.standoff.acoustics.Radiator;
import org.standoff.acoustics.Spectrum;
import org.standoff.acoustics.SpectrumClass;

/** A placement of a shipped source, with the radiator's law over it. */
public record ShippedPlacement(ShippedFile source, String name, JsonNode node) {

  public static List<ShippedPlacement> all() {
    return ShippedCatalogue.ofKind("source").stream()
        .flatMap(source -> of(source).stream())
        .toList();
  }

  public static List<ShippedPlacement> of(ShippedFile source) {
    return source
        .at("/placements")
        .propertyStream()
        .map(entry -> new ShippedPlacement(source, entry.getKey(), entry.getValue()))
        .toList();
  }

  public double number(String pointer) {
    JsonNode value = node.at(pointer);
    if (!value.isNumber()) {
      throw new AssertionError(this + " has no number at " + pointer);
    }
    return value.doubleValue();
  }

  public String text(String pointer) {
    return node.at(pointer).asText();
  }

  public boolean inShell() {
    return text("/radiator/type").equals("shell");
  }

  public double peakDb(double atM) {
    return number("/level/peak_db_spl/typical")
        + radiator().levelChangeDb(number("/level/at_m"), atM);
  }

  /**
   * L_W = long-term level + 10 lg(4π·r²) − 10 lg Σ w·Q: the level at r of a source of that power
   * and directivity in a free field, solved for the power (derived).
   */
  public double soundPowerDb() {
    double r = radiator().effectiveDistanceM(number("/level/at_m"));
    return number("/level/long_term_db_spl")
        + Level.ofPowerRatio(4 * Math.PI * r * r)
        - Level.ofPowerRatio(spectrum().meanDirectivityFactor(directivity()));
  }

  private Radiator radiator() {
    return Radiator.ofId(text("/radiator/type"), number("/radiator/radius_m")).orElseThrow();
  }

  private Spectrum spectrum() {
    return Spectrum.of(
        SpectrumClass.ofId(text("/spectrum/class")).orElseThrow(),
        number("/spectrum/lowest_hz"),
        number("/spectrum/highest_hz"));
  }

  private Directivity directivity() {
    return new Directivity(
        number("/directivity_db/125"),
        number("/directivity_db/500"),
        number("/directivity_db/2k"),
        number("/directivity_db/8k"));
  }

  @Override
  public String toString() {
    return source + ", " + name;
  }
}
