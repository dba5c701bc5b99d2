package org.standoff.acoustics;

import java.util.List;
import java.util.OptionalDouble;

/**
 * The air of a room: the one home of the speed of sound and of absorption on the way.
 *
 * @param temperatureC −20 to 50 °C, the range of ISO 9613-1
 * @param relativeHumidityPercent 0 to 100 %; empty when nobody measured it
 * @param pressureKpa above 0, at most 200 kPa
 */
public record Air(double temperatureC, OptionalDouble relativeHumidityPercent, double pressureKpa) {
  private static final double REFERENCE_PRESSURE_KPA = 101.325;
  private static final double REFERENCE_TEMPERATURE_K = 293.15;
  private static final double TRIPLE_POINT_K = 273.16;
  private static final double ZERO_C_K = 273.15;
  private static final double REFERENCE_SPEED_M_PER_S = 343.2;
  private static final double CO2_MOLE_FRACTION = 400e-6;

  /** Taken for absorption when humidity is not told, in per cent: an ordinary studio. */
  public static final double ASSUMED_HUMIDITY_PERCENT = 50;

  /** 20 °C, humidity unknown, 101.325 kPa: taken when nothing is told. */
  public static final Air STANDARD = at(20);

  public Air {
    if (!(temperatureC >= -20 && temperatureC <= 50)) {
      throw new IllegalArgumentException(
          "the temperature must be from -20 to 50 °C, not " + temperatureC);
    }
    if (relativeHumidityPercent.isPresent()
        && !(relativeHumidityPercent.getAsDouble() >= 0
            && relativeHumidityPercent.getAsDouble() <= 100)) {
      throw new IllegalArgumentException(
          "the relative humidity must be from 0 to 100 %, not "
              + relativeHumidityPercent.getAsDouble());
    }
    if (!(pressureKpa > 0 && pressureKpa <= 200)) {
      throw new IllegalArgumentException(
          "the pressure must be above 0 and at most 200 kPa, not " + pressureKpa);
    }
  }

  /** Air of a known temperature, humidity unknown, at 101.325 kPa. */
  public static Air at(double temperatureC) {
    return new Air(temperatureC, OptionalDouble.empty(), REFERENCE_PRESSURE_KPA);
  }

  /** Air of a known temperature and relative humidity at 101.325 kPa. */
  public static Air at(double temperatureC, double relativeHumidityPercent) {
    return new Air(
        temperatureC, OptionalDouble.of(relativeHumidityPercent), REFERENCE_PRESSURE_KPA);
  }

  /**
   * Speed of sound in m/s: ISO 9613-1, c = 343.2 √(T/293.15 K), or with a known humidity Cramer,
   * JASA 93 (1993) 2510, at 400 ppm of carbon dioxide. {@link #speedLaw()} says which.
   */
  public double speedOfSoundMPerS() {
    return relativeHumidityPercent.isPresent()
        ? HumidAir.speedOfSoundMPerS(
            temperatureC,
            relativeHumidityPercent.getAsDouble() / 100,
            pressureKpa * 1000,
            CO2_MOLE_FRACTION)
        : REFERENCE_SPEED_M_PER_S * Math.sqrt(kelvin() / REFERENCE_TEMPERATURE_K);
  }

  /** The law behind {@link #speedOfSoundMPerS()}: "iso-9613-1" or "cramer-1993". */
  public String speedLaw() {
    return relativeHumidityPercent.isPresent() ? "cramer-1993" : "iso-9613-1";
  }

  /**
   * Attenuation on the way in dB/m, ISO 9613-1:1993 equations 3 to 5; unknown humidity is taken as
   * {@value #ASSUMED_HUMIDITY_PERCENT} %.
   *
   * @param hz frequency, 50 Hz to 10 kHz in the standard; 0 gives 0. Octaves are meant at their
   *     exact midband
   */
  public double attenuationDbPerM(double hz) {
    double relativeT = kelvin() / REFERENCE_TEMPERATURE_K;
    double relativeP = pressureKpa / REFERENCE_PRESSURE_KPA;
    double h = waterMolePercent();
    double oxygenHz = relativeP * (24 + 4.04e4 * h * (0.02 + h) / (0.391 + h));
    double nitrogenHz =
        relativeP
            / Math.sqrt(relativeT)
            * (9 + 280 * h * Math.exp(-4.170 * (Math.cbrt(1 / relativeT) - 1)));
    double classical = 1.84e-11 / relativeP * Math.sqrt(relativeT);
    double oxygen = 0.01275 * Math.exp(-2239.1 / kelvin()) / (oxygenHz + hz * hz / oxygenHz);
    double nitrogen = 0.1068 * Math.exp(-3352.0 / kelvin()) / (nitrogenHz + hz * hz / nitrogenHz);
    return 8.686 * hz * hz * (classical + Math.pow(relativeT, -2.5) * (oxygen + nitrogen));
  }

  /** Energy attenuation m in 1/m, the attenuation in dB/m over 10 lg e; for 4mV in a room. */
  public double energyAttenuationPerM(double hz) {
    return attenuationDbPerM(hz) / Level.ofPowerRatio(Math.E);
  }

  /** What keeps the speed of sound from being sure. */
  public List<Validity> validity() {
    boolean outside =
        relativeHumidityPercent.isPresent()
            && (temperatureC < 0 || temperatureC > 30 || pressureKpa < 75 || pressureKpa > 102);
    return outside
        ? List.of(
            new Validity(
                "outside-cramer-range",
                "Cramer's polynomial is stated for 0 to 30 °C and 75 to 102 kPa"))
        : List.of();
  }

  private double kelvin() {
    return temperatureC + ZERO_C_K;
  }

  private double waterMolePercent() {
    double saturation = -6.8346 * Math.pow(TRIPLE_POINT_K / kelvin(), 1.261) + 4.6151;
    return relativeHumidityPercent.orElse(ASSUMED_HUMIDITY_PERCENT)
        * Math.pow(10, saturation)
        * REFERENCE_PRESSURE_KPA
        / pressureKpa;
  }
}
