package org.standoff.acoustics;

/**
 * Speed of sound in humid air by O. Cramer, "The variation of the specific heat ratio and the speed
 * of sound in air with temperature, pressure, humidity, and CO2 concentration", JASA 93 (1993)
 * 2510, equation 15 with table III; the water vapour by the CIPM formulae that the paper uses.
 */
final class HumidAir {
  private HumidAir() {}

  /**
   * Speed of sound in m/s, 0 to 30 °C, 75 to 102 kPa, water up to 6 %, carbon dioxide up to 1 %;
   * the paper claims 300 ppm.
   *
   * @param humidity relative, 0 to 1
   */
  static double speedOfSoundMPerS(
      double temperatureC, double humidity, double pressurePa, double co2) {
    double t = temperatureC;
    double tt = t * t;
    double water = humidity * saturatedMoleFraction(t, pressurePa);
    return 331.5024
        + 0.603055 * t
        - 0.000528 * tt
        + (51.471935 + 0.1495874 * t - 0.000782 * tt) * water
        + (-1.82e-7 + 3.73e-8 * t - 2.93e-10 * tt) * pressurePa
        + (-85.20931 - 0.228525 * t + 5.91e-5 * tt) * co2
        - 2.835149 * water * water
        - 2.15e-13 * pressurePa * pressurePa
        + 29.179762 * co2 * co2
        + 0.000486 * water * pressurePa * co2;
  }

  private static double saturatedMoleFraction(double t, double pressurePa) {
    double kelvin = t + 273.15;
    double enhancement = 1.00062 + 3.14e-8 * pressurePa + 5.6e-7 * t * t;
    double vapourPa =
        Math.exp(
            1.2811805e-5 * kelvin * kelvin
                - 1.9509874e-2 * kelvin
                + 34.04926034
                - 6353.6311 / kelvin);
    return enhancement * vapourPa / pressurePa;
  }
}
