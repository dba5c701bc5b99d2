package org.standoff.floor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.AWeighting;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Point3;
import org.standoff.fixture.Floors;

class ExposureReportTest {
  private static final Point3 DRUMS = new Point3(3, 4, 1);
  private static final FloorSource KIT = withCrest(Floors.source("kit", 111, DRUMS), 20);
  private static final FloorSource HARP = Floors.source("harp", 85, new Point3(10, 4, 1));
  private static final Seat DRUMMER = new Seat("drummer", "Drummer", new Point3(3, 3.4, 1.2));
  private static final Seat HARPIST = new Seat("harpist", "Harpist", new Point3(10, 4.5, 1.2));
  private static final List<DayPart> DAY =
      List.of(
          new DayPart("loud", 2, Map.of("kit", 0.0, "harp", 0.0)),
          new DayPart("brushes", 3, Map.of("kit", -14.0, "harp", 0.0)),
          new DayPart("talk", 3, Map.of()));

  @Test
  void eachRuleAnswersForItselfWithARange() {
    SeatExposure harpist = seats().get(1);
    double loud = harpist.partsDba().get(0).typical();
    double expectedDaily =
        10
            * Math.log10(
                (2 * Math.pow(10, loud / 10)
                        + 3 * Math.pow(10, harpist.partsDba().get(1).typical() / 10))
                    / 8);
    assertThat(harpist.dailyDba().typical()).isCloseTo(expectedDaily, within(1e-9));
    assertThat(harpist.dailyDba().high() - harpist.dailyDba().typical())
        .isCloseTo(ExposureReport.PLAYER_SPREAD_DB, within(1e-9));
    SeatExposure.Dose niosh = harpist.doses().get(ExposureRule.NIOSH_REL.ordinal());
    assertThat(niosh.rule()).isEqualTo(ExposureRule.NIOSH_REL);
    assertThat(niosh.highPercent() / niosh.typicalPercent()).isCloseTo(4, within(1e-9));
    SeatExposure.Dose osha = harpist.doses().get(ExposureRule.OSHA_PEL.ordinal());
    assertThat(osha.highPercent() / osha.typicalPercent())
        .isCloseTo(Math.pow(2, 6 / 5.0), within(1e-9));
    assertThat(harpist.partsDba().get(2).typical()).isEqualTo(Double.NEGATIVE_INFINITY);
  }

  @Test
  void theHarpistSitsInTheDrumsRoom() {
    double kitDba =
        111 + 10 * Math.log10(4 * (1 - 70.0 / 474) / 70) + AWeighting.db(Octave.HZ_500.midHz());
    assertThat(seats().get(1).partsDba().get(0).typical()).isBetween(kitDba, kitDba + 1);
  }

  @Test
  void thePeakIsThatOfTheDirectSoundWhereACrestIsKnown() {
    double metres = DRUMMER.ears().distanceToM(DRUMS);
    assertThat(seats().get(0).peakDb().orElseThrow().typical())
        .isCloseTo(111 + 20 - 10 * Math.log10(4 * Math.PI * metres * metres), within(0.01));
    ExposureReport silent =
        ExposureReport.of(
            Floors.plan(Floors.hall(70), List.of(HARP), List.of()), 0, List.of(HARPIST), DAY);
    assertThat(silent.seats().get(0).peakDb()).isEmpty();
  }

  @Test
  void valuesThatAreReachedAreNamedAndThoseThatMightBe() {
    SeatExposure drummer = seats().get(0);
    assertThat(drummer.reached()).contains(EuActionValue.LOWER_ACTION, EuActionValue.LIMIT);
    ExposureReport soft = report(List.of(new DayPart("soft", 4, Map.of("kit", -16.0))));
    SeatExposure harpist = soft.seats().get(1);
    assertThat(harpist.dailyDba().typical()).isBetween(74.0, 80.0);
    assertThat(harpist.reached()).isEmpty();
    assertThat(harpist.perhapsReached()).contains(EuActionValue.LOWER_ACTION);
  }

  @Test
  void cautionsNameTheSeatDeferAndNeverCallAnythingSafe() {
    List<HearingCaution> cautions = report(DAY).cautions();
    assertThat(cautions)
        .extracting(HearingCaution::appliesTo)
        .containsExactly("drummer", "harpist", "session");
    for (HearingCaution caution : cautions) {
      assertThat(caution.deferTo()).contains("local regulations");
      assertThat(caution.what() + caution.usualPractice()).doesNotContain("safe", "compliant");
    }
    ExposureReport quiet = report(List.of(new DayPart("harp alone", 1, Map.of("harp", 0.0))));
    assertThat(quiet.cautions())
        .extracting(HearingCaution::code)
        .containsOnly("estimate-not-measurement");
  }

  @Test
  void aDayThatCannotBeIsRefused() {
    assertThatIllegalArgumentException().isThrownBy(() -> new DayPart("x", 25, Map.of()));
    assertThatIllegalArgumentException().isThrownBy(() -> new DayPart("x", Double.NaN, Map.of()));
    assertThatIllegalArgumentException()
        .isThrownBy(
            () ->
                ExposureReport.of(
                    Floors.plan(Floors.hall(70), List.of(KIT), List.of()),
                    0,
                    List.of(new Seat("out", "Out", new Point3(99, 0, 0))),
                    DAY));
  }

  private static List<SeatExposure> seats() {
    return report(DAY).seats();
  }

  private static ExposureReport report(List<DayPart> day) {
    return ExposureReport.of(
        Floors.plan(Floors.hall(70), List.of(KIT, HARP), List.of()),
        0,
        List.of(DRUMMER, HARPIST),
        day);
  }

  private static FloorSource withCrest(FloorSource source, double crestDb) {
    return new FloorSource(
        source.id(),
        source.title(),
        source.position(),
        source.facing(),
        source.radiator(),
        source.directivity(),
        source.powerDb(),
        OptionalDouble.of(crestDb));
  }
}
