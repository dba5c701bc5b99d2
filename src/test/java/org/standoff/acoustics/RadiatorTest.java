package org.standoff.acoustics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RadiatorTest {
  private static final double C = Air.STANDARD.speedOfSoundMPerS();

  @ParameterizedTest
  @ValueSource(strings = {"point", "sphere", "piston", "incoherent-disc", "shell"})
  void aRadiatorIsFoundByItsId(String id) {
    Radiator radiator = Radiator.ofId(id, 0.1).orElseThrow();
    assertThat(radiator.id()).isEqualTo(id);
    assertThat(radiator.radiusM()).isEqualTo(0.1);
  }

  @Test
  void anUnknownRadiatorIsEmpty() {
    assertThat(Radiator.ofId("line", 0.1)).isEmpty();
  }

  @Test
  void inAShellTheLevelIsTheSameEverywhereAndSaysSo() {
    Radiator shell = new Radiator.Shell(0.28);
    assertThat(shell.levelChangeDb(0.3, 0.05)).isEqualTo(0);
    assertThat(shell.validity(0.1, 8000, C))
        .extracting(Validity::code)
        .containsExactly("shell-flat-level", "shell-proximity-assumed");
  }

  @Test
  void inAShellTheRiseIsThatOfAPiston() {
    Polar cardioid = PatternName.CARDIOID.ideal();
    assertThat(new Radiator.Shell(0.28).proximityDb(cardioid, 1, 0.1, 60, C))
        .isEqualTo(new Radiator.Piston(0.28).proximityDb(cardioid, 1, 0.1, 60, C));
  }

  @Test
  void aPistonInsideItsInterferenceZoneIsFlagged() {
    Radiator bell = new Radiator.Piston(0.1);
    assertThat(bell.validity(0.05, 10000, C))
        .extracting(Validity::code)
        .containsExactly("piston-inside-interference-zone");
    assertThat(bell.validity(0.05, 10000, C).get(0).detail()).contains("0.291 m at 10000 Hz");
    assertThat(bell.validity(0.3, 10000, C)).isEmpty();
    assertThat(bell.validity(0.0001, 500, C)).as("ka below 1").isEmpty();
  }

  @Test
  void aDiscAtItsSurfaceIsComputedALittleOffItAndFlagged() {
    Radiator strings = new Radiator.IncoherentDisc(0.6);
    assertThat(strings.effectiveDistanceM(0)).isEqualTo(strings.effectiveDistanceM(0.03));
    assertThat(strings.validity(0.02, 10000, C))
        .extracting(Validity::code)
        .containsExactly("disc-at-surface");
    assertThat(strings.validity(0.03, 10000, C)).isEmpty();
  }

  @Test
  void pointsAndSpheresHaveNothingToFlag() {
    assertThat(new Radiator.Point(0.08).validity(0.001, 20000, C)).isEmpty();
    assertThat(new Radiator.Sphere(0.2).validity(0.001, 20000, C)).isEmpty();
  }

  @Test
  void theNominalRadiusOfAPointChangesNothing() {
    assertThat(new Radiator.Point(0.08).effectiveDistanceM(0.3)).isEqualTo(0.3);
  }

  @Test
  void placesThatDoNotExistAreRefused() {
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Radiator.Point(0).effectiveDistanceM(-0.1));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Radiator.Sphere(0.1).effectiveDistanceM(Double.NaN));
    assertThatIllegalArgumentException().isThrownBy(() -> new Radiator.Piston(0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> new Radiator.Sphere(Double.POSITIVE_INFINITY));
  }

  @Test
  void closeToATrumpetTheBellIsKinderThanAPoint() {
    assertThat(122 + new Radiator.Piston(0.062).levelChangeDb(1, 0.1))
        .as("fff trumpet 0.1 m from the bell")
        .isCloseTo(141.3, within(0.05));
  }
}
