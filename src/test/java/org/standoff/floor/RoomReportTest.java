package org.standoff.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Validity;
import org.standoff.fixture.Floors;

class RoomReportTest {
  private static final RoomReport REPORT =
      RoomReport.of(Floors.hall(70), List.of(new Lining("drape", 40, Octaves.filled(0.5))));

  @Test
  void eyringAndAirAlwaysShortenTheDecay() {
    for (RoomReport.Decay decay : REPORT.decays()) {
      assertThat(decay.eyringS()).isLessThan(decay.sabineS());
      assertThat(decay.sabineWithAirS()).isLessThan(decay.sabineS());
      assertThat(decay.eyringWithAirS()).isLessThan(decay.sabineWithAirS());
      assertThat(decay.meanAbsorption()).isCloseTo(70.0 / 474, within(1e-12));
    }
    assertThat(REPORT.decays()).hasSize(Octave.COUNT);
    assertThat(REPORT.decays().get(0).sabineS()).isCloseTo(0.161 * 655.2 / 70, within(1e-9));
  }

  @Test
  void directionalPatternsMayStandFartherAway() {
    RoomReport.CriticalDistance omni = distance(PatternName.OMNI);
    RoomReport.CriticalDistance cardioid = distance(PatternName.CARDIOID);
    assertThat(omni.midM()).isCloseTo(1.18, within(0.005));
    assertThat(cardioid.midM() / omni.midM()).isCloseTo(Math.sqrt(3), within(1e-9));
    assertThat(omni.octavesM().get(Octave.HZ_8K)).isCloseTo(omni.midM(), within(1e-9));
  }

  @Test
  void materialLowersTheLateFieldTwice() {
    RoomReport.LiningEffect drape = REPORT.linings().get(0);
    double byArea = 10 * Math.log10(70 / 90.0);
    double byFirstReflection = 10 * Math.log10((1 - 90.0 / 474) / (1 - 70.0 / 474));
    assertThat(drape.lateChangeDb()).isCloseTo(byArea + byFirstReflection, within(1e-9));
    assertThat(drape.lateChangesDb().get(Octave.HZ_125))
        .isCloseTo(drape.lateChangeDb(), within(1e-9));
    assertThat(drape.decayS()).isCloseTo(0.161 * 655.2 / 90, within(1e-9));
    assertThat(drape.criticalDistanceM()).isGreaterThan(distance(PatternName.OMNI).midM());
  }

  @Test
  void whereNoLateFieldIsNoneCanBeTakenAway() {
    List<Lining> linings = List.of(new Lining("drape", 40, Octaves.filled(0.5)));
    RoomReport.LiningEffect none = RoomReport.of(Floors.hall(480), linings).linings().get(0);
    assertThat(none.lateChangeDb()).isZero();
    assertThat(none.lateChangesDb().get(Octave.HZ_1K)).isZero();
    RoomReport.LiningEffect last = RoomReport.of(Floors.hall(460), linings).linings().get(0);
    assertThat(last.lateChangeDb()).isEqualTo(Double.NEGATIVE_INFINITY);
  }

  @Test
  void whereRoomLawsEndIsTold() {
    assertThat(REPORT.validity()).extracting(Validity::code).contains("below-schroeder");
    assertThat(REPORT.schroederHz()).isCloseTo(2000 * Math.sqrt(0.161 / 70), within(1e-9));
  }

  private static RoomReport.CriticalDistance distance(PatternName pattern) {
    return REPORT.criticalDistances().stream()
        .filter(one -> one.pattern() == pattern)
        .findFirst()
        .orElseThrow();
  }
}
