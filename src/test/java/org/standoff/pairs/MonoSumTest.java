package org.standoff.pairs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.acoustics.PatternName.CARDIOID;
import static org.standoff.acoustics.PatternName.FIGURE_8;
import static org.standoff.acoustics.PatternName.OMNI;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Point3;
import org.standoff.fixture.Pairs;

class MonoSumTest {
  /** Worked by hand: 40 cm at 31° is 0.60 ms, so 834 Hz at 343.8 m/s. */
  @Test
  void theFirstNotchLiesAtHalfTheInverseOfTheDelay() {
    PairHearing omnis = PairHearing.of(Pairs.of(OMNI, 0.40, 0), Air.at(21));
    Notch notch = MonoSum.of(omnis, SoundOrigin.far(31)).notch().orElseThrow();
    assertThat(notch.hz()).isCloseTo(834, within(1.0));
    assertThat(notch.depthDb()).isEqualTo(MonoSum.FLOOR_DB);
  }

  @Test
  void aLevelDifferenceKeepsTheNotchShallow() {
    PairHearing cardioids = Pairs.heard(CARDIOID, 0.17, 110);
    StereoDifferences heard = cardioids.differences(SoundOrigin.far(40));
    double ratio = Math.pow(10, heard.levelDb() / 20);
    Notch notch = MonoSum.of(cardioids, SoundOrigin.far(40)).notch().orElseThrow();
    assertThat(notch.depthDb()).isCloseTo(20 * Math.log10((ratio - 1) / (ratio + 1)), within(1e-9));
    assertThat(notch.depthDb()).isBetween(-12.0, -8.0);
  }

  @Test
  void aBandIsTheEnergyAverageOfItsTones() {
    PairHearing cardioids = Pairs.heard(CARDIOID, 0.30, 90);
    SoundOrigin origin = SoundOrigin.at(50, 2);
    MonoSum sum = MonoSum.of(cardioids, origin);
    for (Octave octave : Octave.all()) {
      double energy = 0;
      int tones = 4000;
      for (int tone = 0; tone < tones; tone++) {
        double hz = octave.lowerHz() + (octave.upperHz() - octave.lowerHz()) * (tone + 0.5) / tones;
        energy += Math.pow(10, MonoSum.toneDb(cardioids, origin, hz) / 10) / tones;
      }
      assertThat(sum.bandDb().get(octave)).isCloseTo(10 * Math.log10(energy), within(1e-3));
    }
  }

  @Test
  void foldingDownKeepsTheMiddleAndHalvesWhatIsIndependent() {
    PairHearing omnis = Pairs.heard(OMNI, 3, 0);
    MonoSum ahead = MonoSum.of(omnis, SoundOrigin.far(0));
    MonoSum aside = MonoSum.of(omnis, SoundOrigin.far(70));
    assertThat(ahead.foldDownDb().get(Octave.HZ_8K)).isCloseTo(0, within(1e-9));
    assertThat(aside.foldDownDb().get(Octave.HZ_16K)).isCloseTo(-3.01, within(0.1));
  }

  @Test
  void oppositePolarityThinsTheBass() {
    Pair spaced = Pairs.of(FIGURE_8, 0.20, 90);
    PairHearing eights = PairHearing.of(spaced, Air.STANDARD);
    SoundOrigin aside = SoundOrigin.far(80);
    StereoDifferences heard = eights.differences(aside);
    MonoSum sum = MonoSum.of(eights, aside);
    assertThat(heard.oppositePolarity()).isTrue();
    assertThat(heard.right().inverted()).isTrue();
    assertThat(sum.notch().orElseThrow().hz()).isZero();
    assertThat(sum.foldDownDb().get(Octave.HZ_31_5)).isLessThan(-10);
    assertThat(sum.worstOctave()).isEqualTo(Octave.HZ_31_5);
  }

  @Test
  void atTheSideCrossedFigureEightsCancel() {
    MonoSum sum = MonoSum.of(Pairs.heard(FIGURE_8, 0, 90), SoundOrigin.far(90));
    assertThat(sum.bandDb().get(Octave.HZ_1K)).isEqualTo(MonoSum.FLOOR_DB);
  }

  @Test
  void aTreeAddsThreeChannels() {
    Capsule centre = Pairs.capsule(Channel.CENTRE, 0, 0, OMNI.ideal());
    Pair sides = Pairs.of(OMNI, 2, 0);
    Pair tree =
        Pair.of(
            List.of(sides.capsules().get(0), sides.capsules().get(1), centre), PairPlace.ORIGIN);
    PairHearing hearing = PairHearing.of(tree, Air.STANDARD);
    SoundOrigin aside = new SoundOrigin.InRoom(new Point3(1, 3, 0));
    StereoDifferences heard = hearing.differences(aside);
    double real = 0;
    double imaginary = 0;
    double apart = 0;
    for (Heard one : List.of(heard.left(), heard.right(), heard.centre().orElseThrow())) {
      double turn = 2 * Math.PI * 700 * one.leadMs() / 1000;
      real += one.amplitude() * Math.cos(turn);
      imaginary += one.amplitude() * Math.sin(turn);
      apart += one.amplitude() * one.amplitude();
    }
    StereoDifferences ahead = hearing.differences(SoundOrigin.at(0, Math.sqrt(10)));
    double sidesAhead = 2 * ahead.left().amplitude();
    double turn =
        2 * Math.PI * 700 * (ahead.centre().orElseThrow().leadMs() - ahead.left().leadMs()) / 1000;
    double reference = Math.hypot(sidesAhead + Math.cos(turn), Math.sin(turn));
    assertThat(MonoSum.toneDb(hearing, aside, 700))
        .isCloseTo(20 * Math.log10(Math.hypot(real, imaginary) / reference), within(1e-6));
    assertThat(apart).isCloseTo(3, within(0.3));
  }

  @Test
  void aRoundTripCoversEveryDirectionOnce() {
    List<MonoDirection> around =
        MonoSum.around(Pairs.heard(CARDIOID, 0, 90), Double.POSITIVE_INFINITY, 15);
    assertThat(around).hasSize(25);
    assertThat(around.get(0).azimuthDeg()).isEqualTo(-180);
    assertThat(around.get(24).azimuthDeg()).isEqualTo(180);
    assertThat(around.get(12).sum().bandDb().get(Octave.HZ_1K)).isCloseTo(0, within(1e-9));
    assertThat(around.get(15).sum().bandDb().get(Octave.HZ_1K)).isCloseTo(-1.123, within(0.001));
    assertThatThrownBy(() -> MonoSum.around(Pairs.heard(CARDIOID, 0, 90), 2, 0))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
