package org.standoff.pairs.laws;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Polar;
import org.standoff.fixture.Pairs;
import org.standoff.fixture.ShippedPairs;
import org.standoff.pairs.Channel;
import org.standoff.pairs.MidSide;
import org.standoff.pairs.MonoSum;
import org.standoff.pairs.Pair;
import org.standoff.pairs.PairHearing;
import org.standoff.pairs.PairPlace;
import org.standoff.pairs.SoundOrigin;
import org.standoff.pairs.StereoDifferences;
import org.standoff.pairs.listening.ListeningModel;

/** What holds for every pair, every source and every listening model. */
class StereoLawsTest {
  private static final List<ListeningModel> MODELS = ShippedPairs.models();
  private static final Air AIR = Air.STANDARD;

  @Property(seed = "408", tries = 500)
  void mirroredPlayersGiveMirroredImages(
      @ForAll @DoubleRange(min = 0, max = 1) double omniPart,
      @ForAll @DoubleRange(min = 0, max = 3) double spacingM,
      @ForAll @DoubleRange(min = 0, max = 180) double angleDeg,
      @ForAll @DoubleRange(min = 0, max = 180) double azimuthDeg,
      @ForAll @DoubleRange(min = 2, max = 30) double distanceM) {
    PairHearing pair = pair(omniPart, spacingM, angleDeg);
    StereoDifferences left = pair.differences(SoundOrigin.at(azimuthDeg, distanceM));
    StereoDifferences right = pair.differences(SoundOrigin.at(-azimuthDeg, distanceM));
    assertThat(right.levelDb()).isCloseTo(-left.levelDb(), within(1e-9));
    assertThat(right.timeMs()).isCloseTo(-left.timeMs(), within(1e-12));
    for (ListeningModel model : MODELS) {
      assertThat(model.sidewaysPct(right.levelDb(), right.timeMs()))
          .isCloseTo(-model.sidewaysPct(left.levelDb(), left.timeMs()), within(1e-6));
    }
  }

  @Property(seed = "409", tries = 500)
  void swappedChannelsNegateTheDifferences(
      @ForAll @DoubleRange(min = 0, max = 1) double omniPart,
      @ForAll @DoubleRange(min = 0, max = 3) double spacingM,
      @ForAll @DoubleRange(min = -90, max = 90) double leftAimDeg,
      @ForAll @DoubleRange(min = -90, max = 90) double rightAimDeg,
      @ForAll @DoubleRange(min = -180, max = 180) double azimuthDeg) {
    Polar pattern = Polar.firstOrder(omniPart);
    Pair pair =
        Pair.of(
            List.of(
                Pairs.capsule(Channel.LEFT, -spacingM / 2, leftAimDeg, pattern),
                Pairs.capsule(Channel.RIGHT, spacingM / 2, rightAimDeg, pattern)),
            PairPlace.ORIGIN);
    Pair swapped =
        Pair.of(
            List.of(
                Pairs.capsule(Channel.RIGHT, -spacingM / 2, leftAimDeg, pattern),
                Pairs.capsule(Channel.LEFT, spacingM / 2, rightAimDeg, pattern)),
            PairPlace.ORIGIN);
    StereoDifferences heard = differences(pair, SoundOrigin.at(azimuthDeg, 4));
    StereoDifferences other = differences(swapped, SoundOrigin.at(azimuthDeg, 4));
    assertThat(other.levelDb()).isEqualTo(-heard.levelDb());
    assertThat(other.timeMs()).isEqualTo(-heard.timeMs());
  }

  @Property(seed = "410", tries = 300)
  void farIsTheLimitOfNear(
      @ForAll @DoubleRange(min = 0, max = 1) double omniPart,
      @ForAll @DoubleRange(min = 0, max = 3) double spacingM,
      @ForAll @DoubleRange(min = 0, max = 180) double angleDeg,
      @ForAll @DoubleRange(min = -180, max = 180) double azimuthDeg) {
    PairHearing pair = pair(omniPart, spacingM, angleDeg);
    StereoDifferences far = pair.differences(SoundOrigin.far(azimuthDeg));
    StereoDifferences near = pair.differences(SoundOrigin.at(azimuthDeg, 1e6));
    assertThat(near.levelDb()).isCloseTo(far.levelDb(), within(1e-3));
    assertThat(near.timeMs()).isCloseTo(far.timeMs(), within(1e-4));
    assertThat(near.left().amplitude()).isCloseTo(far.left().amplitude(), within(1e-5));
  }

  @Property(seed = "411", tries = 300)
  void levelAndTimeEqualABruteForcePathComputation(
      @ForAll @DoubleRange(min = 0.05, max = 1) double omniPart,
      @ForAll @DoubleRange(min = 0, max = 2) double spacingM,
      @ForAll @DoubleRange(min = 0, max = 90) double angleDeg,
      @ForAll @DoubleRange(min = -5, max = 5) double xM,
      @ForAll @DoubleRange(min = 2, max = 5) double yM,
      @ForAll @DoubleRange(min = -1, max = 1) double zM) {
    StereoDifferences heard =
        pair(omniPart, spacingM, angleDeg)
            .differences(new SoundOrigin.InRoom(new Point3(xM, yM, zM)));
    double half = spacingM / 2;
    double leftM = Math.sqrt((xM + half) * (xM + half) + yM * yM + zM * zM);
    double rightM = Math.sqrt((xM - half) * (xM - half) + yM * yM + zM * zM);
    double tilt = Math.toRadians(angleDeg / 2);
    double leftCos = (-(xM + half) * Math.sin(tilt) + yM * Math.cos(tilt)) / leftM;
    double rightCos = ((xM - half) * Math.sin(tilt) + yM * Math.cos(tilt)) / rightM;
    double left = Math.abs(omniPart + (1 - omniPart) * leftCos);
    double right = Math.abs(omniPart + (1 - omniPart) * rightCos);
    if (left > 0.11 && right > 0.11) {
      assertThat(heard.levelDb())
          .isCloseTo(20 * Math.log10(left * rightM / (right * leftM)), within(1e-9));
    }
    assertThat(heard.timeMs()).isCloseTo((rightM - leftM) / 0.3432, within(1e-9));
  }

  @Property(seed = "412", tries = 300)
  void turningRoomAndPairTogetherChangesNothing(
      @ForAll @DoubleRange(min = -180, max = 180) double turnDeg,
      @ForAll @DoubleRange(min = -60, max = 60) double tiltDeg,
      @ForAll @DoubleRange(min = -180, max = 180) double azimuthDeg,
      @ForAll @DoubleRange(min = -80, max = 80) double elevationDeg,
      @ForAll @DoubleRange(min = 1, max = 20) double distanceM) {
    Pair pair = Pairs.of(PatternName.CARDIOID, 0.17, 110);
    PairPlace place = new PairPlace(new Point3(9.1, 6.7, 2.0), turnDeg, tiltDeg);
    Direction direction = new Direction(azimuthDeg, elevationDeg);
    Point3 inRoom = place.toRoom(new Point3(0, 0, 0).moved(direction, distanceM));
    StereoDifferences asSeen = differences(pair, new SoundOrigin.FromPair(direction, distanceM));
    StereoDifferences asPlaced = differences(pair.at(place), new SoundOrigin.InRoom(inRoom));
    assertThat(asPlaced.levelDb()).isCloseTo(asSeen.levelDb(), within(1e-9));
    assertThat(asPlaced.timeMs()).isCloseTo(asSeen.timeMs(), within(1e-9));
  }

  @Property(seed = "413", tries = 300)
  void theMatrixAgreesWithItsEquivalentPair(
      @ForAll @DoubleRange(min = 0, max = 1) double midOmniPart,
      @ForAll @DoubleRange(min = 0.01, max = 2) double sideGain,
      @ForAll @DoubleRange(min = -180, max = 180) double azimuthDeg,
      @ForAll @DoubleRange(min = -90, max = 90) double elevationDeg) {
    Polar mid = Polar.firstOrder(midOmniPart);
    MidSide matrix = new MidSide(sideGain);
    Pair midSide =
        new Pair(
            List.of(
                Pairs.capsule(Channel.MID, 0, 0, mid),
                Pairs.capsule(Channel.SIDE, 0, 90, PatternName.FIGURE_8.ideal())),
            Optional.of(matrix),
            Optional.empty(),
            Polar.DEFAULT_REJECTION_CAP_DB,
            PairPlace.ORIGIN);
    Pair equivalent = Pairs.of(matrix.equivalentPattern(mid), 0, matrix.equivalentAngleDeg(mid));
    SoundOrigin origin = new SoundOrigin.Far(new Direction(azimuthDeg, elevationDeg));
    StereoDifferences matrixed = differences(midSide, origin);
    StereoDifferences aimed = differences(equivalent, origin);
    double gain = matrix.equivalentGain(mid);
    assertThat(matrixed.left().amplitude())
        .isCloseTo(gain * aimed.left().amplitude(), within(1e-9));
    assertThat(matrixed.right().amplitude())
        .isCloseTo(gain * aimed.right().amplitude(), within(1e-9));
    assertThat(matrixed.levelDb()).isCloseTo(aimed.levelDb(), within(1e-6));
    assertThat(matrixed.timeMs()).isZero();
  }

  @Property(seed = "414", tries = 200)
  void aCoincidentPairHasNoNotchInAnyDirection(
      @ForAll @DoubleRange(min = 0, max = 1) double omniPart,
      @ForAll @DoubleRange(min = 0, max = 180) double angleDeg,
      @ForAll @DoubleRange(min = -180, max = 180) double azimuthDeg) {
    MonoSum sum = MonoSum.of(pair(omniPart, 0, angleDeg), SoundOrigin.at(azimuthDeg, 3));
    assertThat(sum.notch()).isEmpty();
    for (Octave octave : Octave.all()) {
      assertThat(sum.bandDb().get(octave))
          .isCloseTo(sum.bandDb().get(Octave.HZ_31_5), within(1e-9));
    }
  }

  @Property(seed = "415", tries = 200)
  void crossedFigureEightsSumToAFigureEightThatLooksAhead(
      @ForAll @DoubleRange(min = -180, max = 180) double azimuthDeg) {
    PairHearing pair = pair(0, 0, 90);
    double ahead = Math.abs(Math.cos(Math.toRadians(azimuthDeg)));
    double expectedDb = Math.max(20 * Math.log10(ahead), MonoSum.FLOOR_DB);
    MonoSum sum = MonoSum.of(pair, SoundOrigin.far(azimuthDeg));
    assertThat(sum.toneDb().get(Octave.HZ_4K)).isCloseTo(expectedDb, within(1e-6));
    assertThat(sum.bandDb().get(Octave.HZ_16K)).isCloseTo(expectedDb, within(1e-6));
  }

  @Property(seed = "416", tries = 500)
  void everyFigureIsFinite(
      @ForAll @DoubleRange(min = 0, max = 1) double omniPart,
      @ForAll @DoubleRange(min = 0, max = 3) double spacingM,
      @ForAll @DoubleRange(min = 0, max = 180) double angleDeg,
      @ForAll("roundAzimuths") double azimuthDeg,
      @ForAll @DoubleRange(min = 1.6, max = 1e4) double distanceM) {
    PairHearing pair = pair(omniPart, spacingM, angleDeg);
    for (SoundOrigin origin :
        List.of(SoundOrigin.far(azimuthDeg), SoundOrigin.at(azimuthDeg, distanceM))) {
      StereoDifferences heard = pair.differences(origin);
      assertThat(List.of(heard.levelDb(), heard.timeMs()))
          .allSatisfy(figure -> assertThat(figure).isFinite());
      MonoSum sum = MonoSum.of(pair, origin);
      for (Octave octave : Octave.all()) {
        assertThat(sum.bandDb().get(octave)).isBetween(-60.0, 60.0);
        assertThat(sum.toneDb().get(octave)).isBetween(-60.0, 60.0);
        assertThat(sum.foldDownDb().get(octave)).isBetween(-60.0, 1e-9);
      }
    }
  }

  /** Angles at which nulls fall, besides any. */
  @Provide
  Arbitrary<Double> roundAzimuths() {
    return Arbitraries.integers().between(-12, 12).map(step -> step * 15.0);
  }

  private static PairHearing pair(double omniPart, double spacingM, double angleDeg) {
    return PairHearing.of(Pairs.of(Polar.firstOrder(omniPart), spacingM, angleDeg), AIR);
  }

  private static StereoDifferences differences(Pair pair, SoundOrigin origin) {
    return PairHearing.of(pair, AIR).differences(origin);
  }
}
