package org.standoff.pairs.published;

import org.standoff.acoustics.PatternName;
import org.standoff.fixture.Pairs;
import org.standoff.pairs.MonoSum;
import org.standoff.pairs.PairHearing;
import org.standoff.pairs.SoundOrigin;
import org.standoff.pairs.StereoDifferences;

/**
 * The one place where the check rows' axes meet the service's: rows count the source angle to the
 * right and differences right minus left, the service counts both to the left. Mirroring the angle
 * and the sense together leaves the numbers as they are.
 */
record RightwardRow(PairHearing hearing) {
  static RightwardRow of(PatternName pattern, double spacingM, double angleDeg) {
    return new RightwardRow(Pairs.heard(pattern, spacingM, angleDeg));
  }

  /** Right minus left in dB for a plane wave. */
  double levelDb(double angleDeg) {
    return -differences(far(angleDeg)).levelDb();
  }

  /** Right minus left in dB for a source at a distance. */
  double levelDb(double angleDeg, double distanceM) {
    return -differences(at(angleDeg, distanceM)).levelDb();
  }

  /** Lead of the right channel in ms for a plane wave. */
  double timeMs(double angleDeg) {
    return -differences(far(angleDeg)).timeMs();
  }

  /** Lead of the right channel in ms for a source at a distance. */
  double timeMs(double angleDeg, double distanceM) {
    return -differences(at(angleDeg, distanceM)).timeMs();
  }

  /** Mono sum of a tone in dB re the middle. */
  double monoDb(double angleDeg, double hz) {
    return MonoSum.toneDb(hearing, far(angleDeg), hz);
  }

  private StereoDifferences differences(SoundOrigin origin) {
    return hearing.differences(origin);
  }

  private static SoundOrigin far(double rightwardDeg) {
    return SoundOrigin.far(-rightwardDeg);
  }

  private static SoundOrigin at(double rightwardDeg, double distanceM) {
    return SoundOrigin.at(-rightwardDeg, distanceM);
  }
}
