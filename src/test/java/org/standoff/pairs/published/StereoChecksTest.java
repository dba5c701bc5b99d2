package org.standoff.pairs.published;

import static org.standoff.acoustics.PatternName.CARDIOID;
import static org.standoff.acoustics.PatternName.FIGURE_8;
import static org.standoff.acoustics.PatternName.HYPERCARDIOID;
import static org.standoff.acoustics.PatternName.OMNI;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.fixture.CheckTable;
import org.standoff.fixture.Pairs;
import org.standoff.pairs.Capsule;
import org.standoff.pairs.Channel;
import org.standoff.pairs.DiffuseCorrelation;
import org.standoff.pairs.Disc;
import org.standoff.pairs.MidSide;
import org.standoff.pairs.Pair;
import org.standoff.pairs.PairHearing;
import org.standoff.pairs.PairPlace;
import org.standoff.pairs.SoundOrigin;
import org.standoff.pairs.StereoDifferences;

/** Topic L without listening models: geometry, correlation, mono; sources stand in each row. */
class StereoChecksTest {
  private static final double ANY_HZ = 1000;

  @TestFactory
  Stream<DynamicTest> levelAndTimeDifferences() {
    RightwardRow nearCoincident = RightwardRow.of(CARDIOID, 0.17, 110);
    RightwardRow thirty = RightwardRow.of(CARDIOID, 0.30, 90);
    return CheckTable.ofTopics("L-stereo-geometry")
        .row("L01", () -> RightwardRow.of(CARDIOID, 0, 90).levelDb(45))
        .row("L02", () -> RightwardRow.of(CARDIOID, 0, 110).levelDb(30))
        .row("L03", () -> RightwardRow.of(CARDIOID, 0, 120).levelDb(60))
        .row("L04", () -> RightwardRow.of(FIGURE_8, 0, 90).levelDb(22.5))
        .row("L05", () -> RightwardRow.of(FIGURE_8, 0, 90).levelDb(30))
        .row("L06", () -> nearCoincident.levelDb(30))
        .row("L07", () -> nearCoincident.timeMs(30))
        .row("L08", () -> thirty.levelDb(40))
        .row("L09", () -> thirty.timeMs(40))
        .row("L10", () -> RightwardRow.of(CARDIOID, 0.20, 90).levelDb(50))
        .row("L11", () -> RightwardRow.of(OMNI, 0.40, 0).timeMs(30))
        .row("L12", () -> RightwardRow.of(OMNI, 0.60, 0).timeMs(30, 2))
        .row("L13", () -> RightwardRow.of(OMNI, 0.60, 0).levelDb(30, 2))
        .row("L14", () -> RightwardRow.of(OMNI, 1.0, 0).levelDb(45, 1.5))
        .row("L15", () -> nearCoincident.levelDb(30, 1))
        .tests();
  }

  @TestFactory
  Stream<DynamicTest> midSide() {
    return CheckTable.ofTopics("L-MS")
        .row("L54", () -> equivalentAngleDeg(CARDIOID, 1) / 2)
        .row("L55", () -> new MidSide(1).equivalentPattern(CARDIOID.ideal()).omniPart())
        .row("L56", () -> equivalentAngleDeg(OMNI, 1))
        .row("L57", () -> equivalentAngleDeg(FIGURE_8, 1))
        .row("L58", () -> equivalentAngleDeg(CARDIOID, 0.5))
        .tests();
  }

  @TestFactory
  Stream<DynamicTest> diffuseCorrelation() {
    return CheckTable.ofTopics("L-diffuse-correlation")
        .row("L47", () -> correlation(CARDIOID, 0, 90, ANY_HZ))
        .row("L48", () -> correlation(CARDIOID, 0, 120, ANY_HZ))
        .row("L49", () -> correlation(FIGURE_8, 0, 90, ANY_HZ))
        .row("L50", () -> correlation(HYPERCARDIOID, 0, 110, ANY_HZ))
        .row("L51", () -> correlation(OMNI, 0.40, 0, 200))
        .row(
            "L52",
            () -> DiffuseCorrelation.of(Pairs.heard(OMNI, 0.40, 0)).firstZeroHz().orElseThrow())
        .row("L53", () -> correlation(CARDIOID, 0.17, 110, 300))
        .row("L73", () -> correlation(CARDIOID, 0.17, 110, 300))
        .row("L74", () -> correlation(CARDIOID, 1.5, 90, 8000))
        .tests();
  }

  @TestFactory
  Stream<DynamicTest> monoSum() {
    return CheckTable.ofTopics("L-mono")
        .row("L59", () -> RightwardRow.of(CARDIOID, 0, 90).monoDb(45, ANY_HZ))
        .row("L60", () -> RightwardRow.of(FIGURE_8, 0, 90).monoDb(45, ANY_HZ))
        .row("L61", () -> RightwardRow.of(OMNI, 0.40, 0).monoDb(30, 429))
        .row("L62", () -> RightwardRow.of(CARDIOID, 0.17, 110).monoDb(40, 1000))
        .tests();
  }

  @TestFactory
  Stream<DynamicTest> threeCapsuleTree() {
    PairHearing tree = PairHearing.of(tree(2.0, 1.5), Air.STANDARD);
    return CheckTable.ofTopics("L-tree")
        .row(
            "L63",
            () -> {
              StereoDifferences heard =
                  tree.differences(new SoundOrigin.InRoom(new Point3(0, 4, 0)));
              return heard.centre().orElseThrow().leadMs() - heard.left().leadMs();
            })
        .row("L64", () -> -tree.differences(new SoundOrigin.InRoom(new Point3(3, 4, 0))).timeMs())
        .tests();
  }

  @TestFactory
  Stream<DynamicTest> baffledOmnis() {
    Pair open = Pairs.of(OMNI, 0.165, 0);
    RightwardRow baffled =
        new RightwardRow(
            PairHearing.of(
                new Pair(
                    open.capsules(),
                    Optional.empty(),
                    Optional.of(new Disc(0.15)),
                    open.rejectionCapDb(),
                    open.place()),
                Air.STANDARD));
    return CheckTable.ofTopics("L-baffled")
        .row("L65", () -> baffled.timeMs(90))
        .row("L66", () -> baffled.timeMs(45))
        .tests();
  }

  private static Pair tree(double baseM, double forwardM) {
    return Pair.of(
        List.of(
            Pairs.capsule(Channel.LEFT, -baseM / 2, 0, OMNI.ideal()),
            Pairs.capsule(Channel.RIGHT, baseM / 2, 0, OMNI.ideal()),
            new Capsule(Channel.CENTRE, new Point3(0, forwardM, 0), Direction.FRONT, OMNI.ideal())),
        PairPlace.ORIGIN);
  }

  private static double equivalentAngleDeg(PatternName mid, double sideGain) {
    return new MidSide(sideGain).equivalentAngleDeg(mid.ideal());
  }

  private static double correlation(
      PatternName pattern, double spacingM, double angleDeg, double hz) {
    return DiffuseCorrelation.of(Pairs.heard(pattern, spacingM, angleDeg)).at(hz);
  }
}
