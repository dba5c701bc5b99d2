package org.standoff.floor;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.standoff.acoustics.Direction;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.SourceSide;
import org.standoff.acoustics.UncertainDb;

/**
 * What a day on this floor does to the ears at each seat: an estimate with its range, each
 * published rule for itself. Not a measurement, and not a statement of compliance.
 *
 * @param seats in the order asked for
 * @param cautions usual practice, and whose word counts
 */
public record ExposureReport(List<SeatExposure> seats, List<HearingCaution> cautions) {
  /** Players of one kind differ by about this much, 5th to 95th percentile (assumed). */
  public static final double PLAYER_SPREAD_DB = 6;

  private static final String DEFER_TO =
      "local regulations, and a competent person with a meter to IEC 61672 or a dosimeter";

  public ExposureReport {
    seats = List.copyOf(seats);
    cautions = List.copyOf(cautions);
  }

  /**
   * The report of a day.
   *
   * @param plan the floor; its microphones don't matter
   * @param order of the reflections computed one by one
   * @throws IllegalArgumentException when a seat has a fault: outside the room, inside a source
   */
  public static ExposureReport of(FloorPlan plan, int order, List<Seat> seats, List<DayPart> day) {
    BleedMatrix ears = BleedMatrix.of(heardAt(plan, seats), order);
    List<SeatExposure> exposures = new ArrayList<>();
    List<HearingCaution> cautions = new ArrayList<>();
    for (int i = 0; i < seats.size(); i++) {
      SeatExposure exposure = exposure(ears, i, seats.get(i), day);
      exposures.add(exposure);
      caution(seats.get(i), exposure).ifPresent(cautions::add);
    }
    cautions.add(
        new HearingCaution(
            "estimate-not-measurement",
            "medium",
            "session",
            "players differ by ±"
                + Math.round(PLAYER_SPREAD_DB)
                + " dB and headphones, rehearsal"
                + " at home and the way there are not counted",
            "usual practice is to measure at the seats while the loudest piece is played",
            DEFER_TO));
    return new ExposureReport(exposures, cautions);
  }

  /** The floor with an ear at each seat in place of its microphones; its faults are the seats'. */
  public static FloorPlan heardAt(FloorPlan plan, List<Seat> seats) {
    return plan.with(seats.stream().map(seat -> ear(seat)).toList());
  }

  private static SeatExposure exposure(BleedMatrix ears, int seat, Seat who, List<DayPart> day) {
    List<BleedCell> row = ears.row(seat);
    double[] peaksDb = peaksDb(ears.plan().sources(), row);
    List<UncertainDb> parts = new ArrayList<>();
    double peakDb = Double.NEGATIVE_INFINITY;
    for (DayPart part : day) {
      OctaveEnergies heard = OctaveEnergies.NONE;
      for (int i = 0; i < row.size(); i++) {
        Double louderDb = part.soundingDb().get(row.get(i).sourceId());
        if (louderDb != null) {
          heard = heard.plus(row.get(i).total().louder(louderDb));
          peakDb = Math.max(peakDb, peaksDb[i] + louderDb);
        }
      }
      parts.add(new UncertainDb(heard.overallDba(), PLAYER_SPREAD_DB));
    }
    UncertainDb daily = new UncertainDb(dailyDba(parts, day, 0), PLAYER_SPREAD_DB);
    List<SeatExposure.Dose> doses =
        Arrays.stream(ExposureRule.values()).map(rule -> dose(rule, parts, day)).toList();
    Optional<UncertainDb> peak =
        peakDb == Double.NEGATIVE_INFINITY
            ? Optional.empty()
            : Optional.of(new UncertainDb(peakDb, PLAYER_SPREAD_DB));
    List<EuActionValue> reached = reached(daily.typical(), peak.map(UncertainDb::typical));
    List<EuActionValue> perhaps =
        reached(daily.high(), peak.map(UncertainDb::high)).stream()
            .filter(value -> !reached.contains(value))
            .toList();
    return new SeatExposure(who.id(), parts, daily, doses, peak, reached, perhaps);
  }

  private static SeatExposure.Dose dose(
      ExposureRule rule, List<UncertainDb> parts, List<DayPart> day) {
    return new SeatExposure.Dose(
        rule,
        rule.dosePercent(exposures(parts, day, -PLAYER_SPREAD_DB)),
        rule.dosePercent(exposures(parts, day, 0)),
        rule.dosePercent(exposures(parts, day, PLAYER_SPREAD_DB)));
  }

  /** Peaks of the direct sound of each source: the long-term level and the crest over it. */
  private static double[] peaksDb(List<FloorSource> sources, List<BleedCell> row) {
    double[] peaksDb = new double[row.size()];
    for (int i = 0; i < peaksDb.length; i++) {
      OptionalDouble crestDb = sources.get(i).crestDb();
      peaksDb[i] =
          crestDb.isPresent()
              ? row.get(i).direct().overallDb() + crestDb.getAsDouble()
              : Double.NEGATIVE_INFINITY;
    }
    return peaksDb;
  }

  private static double dailyDba(List<UncertainDb> parts, List<DayPart> day, double movedDb) {
    return DailyExposure.levelDba(exposures(parts, day, movedDb));
  }

  private static List<Exposure> exposures(
      List<UncertainDb> parts, List<DayPart> day, double movedDb) {
    List<Exposure> exposures = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      exposures.add(new Exposure(parts.get(i).typical() + movedDb, day.get(i).hours()));
    }
    return exposures;
  }

  private static List<EuActionValue> reached(double dailyDba, Optional<Double> peakDb) {
    return Arrays.stream(EuActionValue.values())
        .filter(
            value ->
                dailyDba >= value.dailyDba()
                    || peakDb.filter(peak -> peak >= value.peak().db()).isPresent())
        .toList();
  }

  private static Optional<HearingCaution> caution(Seat seat, SeatExposure exposure) {
    boolean wholeDay = exposure.doses().stream().anyMatch(dose -> dose.highPercent() >= 100);
    if (!wholeDay && exposure.reached().isEmpty() && exposure.perhapsReached().isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new HearingCaution(
            "hearing",
            exposure.reached().isEmpty() ? "medium" : "high",
            seat.id(),
            String.format(
                Locale.ROOT,
                "%s: LEX,8h is estimated at %.0f to %.0f dB(A)",
                seat.title(),
                exposure.dailyDba().low(),
                exposure.dailyDba().high()),
            "usual practice is to shorten the loud pieces, to move or turn what is loudest, to take"
                + " breaks in quiet, and to offer hearing protection",
            DEFER_TO));
  }

  private static FloorMicrophone ear(Seat seat) {
    return new FloorMicrophone(
        seat.id(),
        seat.title(),
        seat.ears(),
        Direction.FRONT,
        FloorPattern.ideal(PatternName.OMNI),
        List.of(),
        Double.POSITIVE_INFINITY,
        0,
        Set.of(),
        SourceSide.REFERENCE);
  }
}
