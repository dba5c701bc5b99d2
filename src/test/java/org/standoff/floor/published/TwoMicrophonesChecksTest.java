package org.standoff.floor.published;

import static org.standoff.acoustics.PatternName.OMNI;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Room;
import org.standoff.fixture.CheckTable;
import org.standoff.fixture.Floors;
import org.standoff.floor.AlignedMicrophone;
import org.standoff.floor.Alignment;
import org.standoff.floor.AlignmentQuestion;
import org.standoff.floor.FloorMicrophone;
import org.standoff.floor.FloorPlan;
import org.standoff.floor.OverheadPair;

/** Topic K, and the worked figures that follow from it; sources stand in each row. */
class TwoMicrophonesChecksTest {
  private static final Point3 DRUM = new Point3(5, 4, 0.8);

  @TestFactory
  Stream<DynamicTest> twoMicrophones() {
    return CheckTable.ofTopics("K-two-mics")
        .row("K01", () -> later(1, 48_000, 20).afterFirstMs())
        .row("K02", () -> later(1, 48_000, 20).afterFirstSamples())
        .row("K03", () -> later(1, 44_100, 20).afterFirstSamples())
        .row("K04", () -> later(0.5, 96_000, 20).afterFirstSamples())
        .row("K05", () -> later(1, 48_000, 20).comb().firstNotchHz())
        .row("K06", () -> otherSide().comb().firstNotchHz())
        .words("K07", TwoMicrophonesChecksTest::invertTheOtherSide)
        .words("K08", TwoMicrophonesChecksTest::invertTheOtherSide)
        .words("K09", TwoMicrophonesChecksTest::invertTheOtherSide)
        .row("K10", () -> overheads().levelDifferenceDb())
        .row("K11", () -> overheads().leadMs())
        .tests();
  }

  @TestFactory
  Stream<DynamicTest> workedArrivals() {
    String chain = "checked where levels are computed";
    String room = "checked with the room and the floor of the demo";
    return CheckTable.ofTopics("W-worked")
        .row("W11", () -> later(1.08, 48_000, 21).afterFirstSamples())
        .row("W12", () -> later(1.08, 48_000, 12).afterFirstSamples())
        .notHere("W01", chain)
        .notHere("W02", chain)
        .notHere("W03", chain)
        .notHere("W04", chain)
        .notHere("W05", chain)
        .notHere("W06", chain)
        .notHere("W07", chain)
        .notHere("W08", chain)
        .notHere("W09", chain)
        .notHere("W10", chain)
        .notHere("W13", room)
        .notHere("W14", room)
        .notHere("W15", room)
        .notHere("W16", room)
        .notHere("W17", chain)
        .tests();
  }

  private static AlignedMicrophone later(double byM, double rateHz, double temperatureC) {
    return aligned(above("far", 0.05 + byM), rateHz, temperatureC);
  }

  private static AlignedMicrophone otherSide() {
    return aligned(Floors.opposite(above("far", 1.05)), 48_000, 20);
  }

  private static String invertTheOtherSide() {
    AlignedMicrophone under =
        aligned(
            Floors.opposite(Floors.microphone("far", OMNI, new Point3(5, 4, 0.7), DRUM, "drum")),
            48_000,
            20);
    return under.polarity().invertBySide() && under.polarity().invertBySum() ? "yes" : "no";
  }

  private static AlignedMicrophone aligned(
      FloorMicrophone other, double rateHz, double temperatureC) {
    Room hall = Floors.hall(70);
    Room tempered =
        new Room(
            hall.volumeM3(),
            hall.surfaceM2(),
            hall.absorptionAreaM2(),
            hall.box(),
            Air.at(temperatureC),
            hall.backgroundNoiseDba());
    FloorPlan plan =
        Floors.plan(
            tempered,
            List.of(Floors.source("drum", 100, DRUM)),
            List.of(above("near", 0.05), other));
    return Alignment.of(
            new AlignmentQuestion(
                plan, "drum", List.of("near", "far"), List.of(), rateHz, 0, 20, 20))
        .microphones()
        .get(1);
  }

  private static FloorMicrophone above(String id, double byM) {
    return Floors.microphone(
        id, OMNI, new Point3(DRUM.xM(), DRUM.yM(), DRUM.zM() + byM), DRUM, "drum");
  }

  private static OverheadPair overheads() {
    return OverheadPair.about(DRUM, new Point3(4, 4, 0.8), new Point3(6.12, 4, 0.8), 343.2, 48_000);
  }
}
