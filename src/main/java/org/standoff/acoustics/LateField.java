package org.standoff.acoustics;

/**
 * The reverberant field that is left after n+1 reflections, 4(1 − ᾱ)^(n+1)/A with ᾱ = A/S: stated
 * here and nowhere else. Reflections up to order n are computed one by one and so are not counted
 * twice; n = 0 equals Beranek's 4/R. Derived from diffuse-field theory (Beranek, Acoustics;
 * Kuttruff, Room Acoustics). A room with ᾱ ≥ 1 has no late field.
 */
public final class LateField {
  private LateField() {}

  /**
   * Late level in dB at an omnidirectional microphone, Lw + 10 lg(4(1 − ᾱ)^(n+1)/A).
   *
   * @param powerLevelDb Lw re 1 pW
   * @param areaM2 A > 0, equivalent absorption area
   * @param surfaceM2 S > 0
   * @param order n ≥ 0, order of the reflections that are computed one by one
   */
  public static double levelDb(double powerLevelDb, double areaM2, double surfaceM2, int order) {
    return powerLevelDb + Level.ofPowerRatio(perPower(areaM2, surfaceM2, order));
  }

  /** Room constant R = S ᾱ/(1 − ᾱ) in m²; ∞ for ᾱ ≥ 1. */
  public static double roomConstantM2(double areaM2, double surfaceM2) {
    return 4 / perPower(areaM2, surfaceM2, 0);
  }

  /**
   * Direct sound over late field at a microphone in dB, 10 lg(Qs Qm p² A/(16 π r² (1 − ᾱ)^(n+1))).
   *
   * @param sourceFactor Qs of the source towards the microphone
   * @param microphone its pattern
   * @param cosTheta cosine of the angle at which the microphone hears the source
   * @param effectiveDistanceM r > 0
   */
  public static double directToLateDb(
      double sourceFactor,
      Polar microphone,
      double cosTheta,
      double effectiveDistanceM,
      double areaM2,
      double surfaceM2,
      int order) {
    double pressure = microphone.pressure(cosTheta);
    double direct =
        sourceFactor
            * pressure
            * pressure
            / (4 * Math.PI * effectiveDistanceM * effectiveDistanceM);
    double late = perPower(areaM2, surfaceM2, order) * microphone.randomEnergyEfficiency();
    return Level.ofPowerRatio(direct / late);
  }

  private static double perPower(double areaM2, double surfaceM2, int order) {
    double left = Math.max(1 - areaM2 / surfaceM2, 0);
    return 4 * Math.pow(left, order + 1.0) / areaM2;
  }
}
