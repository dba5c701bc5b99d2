package org.standoff.kit.hold;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.standoff.kit.Period;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.OpeningHours;

/**
 * Counted by hand. The houses and the session are those of the demo: Friday 11 June 2027 10:00 to
 * Monday 14 June 11:00; one house charges a weekend 1.5 days, the other 1 and at least 60.00, and
 * has what comes on a Monday on Tuesday at 9:00.
 */
class HoldChargeTest {
  private static final ZoneId VIENNA = ZoneId.of("Europe/Vienna");
  private static final String OSTREL = "ostrel-hire";
  private static final String VENNICK = "vennick-loan-store";
  private static final Period SESSION = new Period(at("2027-06-11T10:00"), at("2027-06-14T11:00"));
  private static final Instant BEFORE = at("2027-06-01T12:00");
  private static final Optional<Instant> COLLECTED = Optional.of(SESSION.from());
  private static final Optional<Instant> NOT_YET = Optional.empty();

  private static final Map<String, HouseTerms> TERMS =
      Map.of(
          OSTREL,
          house(OSTREL, "mon 08:00-17:30, tue 08:00-17:30, wed 08:00-17:30", "1.5", 0),
          VENNICK,
          house(VENNICK, "tue 09:00-16:00, wed 09:00-16:00", "1", 6000),
          "always-open",
          house("always-open", "", "1.5", 0));

  private final List<HeldLine> lines = new ArrayList<>();

  @Test
  void eachHouseChargesItsOwnDaysAndAtLeastItsLeast() {
    line(OSTREL, unit("A", 1400, NOT_YET, NOT_YET), unit("B", 1400, NOT_YET, NOT_YET));
    line(VENNICK, unit("C", 1500, NOT_YET, NOT_YET));
    HoldCharge charge = chargeAsOf(BEFORE);
    HoldCharge.AtHouse ostrel = charge.houses().get(0);
    // 2 x 14.00 x (1 + 1.5 + 1)
    assertThat(ostrel.units().get(0).chargedDays()).isEqualTo(3.5);
    assertThat(ostrel.owedMinor()).isEqualTo(9_800);
    HoldCharge.AtHouse vennick = charge.houses().get(1);
    // 15.00 x (1 + 1 + 1) = 45.00, under the least charge of 60.00
    assertThat(vennick.sumMinor()).isEqualTo(4_500);
    assertThat(vennick.owedMinor()).isEqualTo(6_000);
  }

  @Test
  void aReturnIntoTheDropBoxIsNotLateWhenItIsCheckedInAtSomeTimeOfTheNextOpeningDay() {
    line(VENNICK, unit("C", 1500, COLLECTED, Optional.of(at("2027-06-15T11:40"))));
    HoldCharge.AtHouse vennick = chargeAsOf(at("2027-06-16T12:00")).houses().get(0);
    assertThat(vennick.units().get(0).dueAt()).isEqualTo(at("2027-06-15T09:00"));
    assertThat(vennick.lateMinor()).isZero();
  }

  @Test
  void laterOnTheDayOfReturnIsNotLateAndADayLaterIsOneDay() {
    line(OSTREL, unit("A", 1400, COLLECTED, Optional.of(at("2027-06-14T17:00"))));
    line(OSTREL, unit("B", 1400, COLLECTED, Optional.of(at("2027-06-15T08:00"))));
    List<HoldCharge.OfUnit> units = chargeAsOf(at("2027-06-20T12:00")).houses().get(0).units();
    assertThat(units).extracting(HoldCharge.OfUnit::lateDays).containsExactly(0.0, 1.0);
    assertThat(units).extracting(HoldCharge.OfUnit::lateMinor).containsExactly(0L, 1_400L);
  }

  @Test
  void lateOverAWeekendIsChargedAsTheHouseChargesWeekends() {
    line(OSTREL, unit("A", 1400, COLLECTED, Optional.of(at("2027-06-21T09:00"))));
    HoldCharge.AtHouse ostrel = chargeAsOf(at("2027-06-30T12:00")).houses().get(0);
    // Tuesday to Friday 4, the weekend 1.5, Monday 1; on top of 14.00 x 3.5
    assertThat(ostrel.units().get(0).lateDays()).isEqualTo(6.5);
    assertThat(ostrel.lateMinor()).isEqualTo(9_100);
    assertThat(ostrel.owedMinor()).isEqualTo(4_900 + 9_100);
  }

  @Test
  void whatIsNotBackIsMissingFromTheReturnOnAndNotBefore() {
    line(OSTREL, unit("A", 1400, COLLECTED, NOT_YET));
    assertThat(chargeAsOf(at("2027-06-14T10:59")).houses().get(0).missing()).isEmpty();
    HoldCharge.AtHouse late = chargeAsOf(at("2027-06-16T09:00")).houses().get(0);
    assertThat(late.missing()).extracting(unit -> unit.held().serial()).containsExactly("A");
    assertThat(late.lateMinor()).isEqualTo(2 * 1_400);
  }

  @Test
  void whatNobodyCollectedIsChargedAndNeverMissing() {
    line(OSTREL, unit("A", 1400, NOT_YET, NOT_YET));
    HoldCharge.AtHouse ostrel = chargeAsOf(at("2027-06-20T12:00")).houses().get(0);
    assertThat(ostrel.owedMinor()).isEqualTo(4_900);
    assertThat(ostrel.missing()).isEmpty();
  }

  @Test
  void whatWasGivenUpCostsNothingNotEvenTheLeastCharge() {
    line(VENNICK, givenUp("C"));
    assertThat(chargeAsOf(BEFORE).houses()).isEmpty();
  }

  @Test
  void whatWasBackBeforeAnExtensionIsChargedAsItStoodThen() {
    Instant longer = at("2027-06-16T11:00");
    line(
        OSTREL,
        until(SESSION.to(), "A", Optional.of(at("2027-06-15T09:00"))),
        until(longer, "B", Optional.of(longer)));
    List<HoldCharge.OfUnit> units = chargeAsOf(at("2027-06-20T12:00")).houses().get(0).units();
    assertThat(units).extracting(HoldCharge.OfUnit::chargedDays).containsExactly(3.5, 5.5);
    assertThat(units).extracting(HoldCharge.OfUnit::lateDays).containsExactly(1.0, 0.0);
  }

  @Test
  void aReturnDueAtMidnightIsDueOnTheDayBefore() {
    Instant midnight = at("2027-06-14T00:00");
    line("always-open", until(midnight, "A", Optional.of(midnight)));
    line("always-open", until(midnight, "B", Optional.of(at("2027-06-14T23:00"))));
    List<HoldCharge.OfUnit> units = chargeAsOf(at("2027-06-20T12:00")).houses().get(0).units();
    assertThat(units).extracting(HoldCharge.OfUnit::chargedDays).containsExactly(2.5, 2.5);
    assertThat(units).extracting(HoldCharge.OfUnit::lateDays).containsExactly(0.0, 1.0);
  }

  @Property(tries = 200, seed = "20261127")
  void laterBackNeverCostsLess(
      @ForAll @IntRange(max = 2000) int hours, @ForAll @IntRange(max = 200) int more) {
    Instant back = SESSION.from().plus(Duration.ofHours(hours));
    assertThat(owed(back.plus(Duration.ofHours(more)))).isGreaterThanOrEqualTo(owed(back));
  }

  private static long owed(Instant back) {
    HoldChargeTest test = new HoldChargeTest();
    test.line(OSTREL, unit("A", 1401, COLLECTED, Optional.of(back)));
    return test.chargeAsOf(back).houses().get(0).owedMinor();
  }

  private HoldCharge chargeAsOf(Instant now) {
    return HoldCharge.of(
        new Hold(
            new UUID(1, 2),
            "desk",
            "saltlight-2027-06",
            SESSION,
            HoldState.CONFIRMED,
            Optional.empty(),
            BEFORE,
            BEFORE,
            1,
            lines),
        TERMS,
        now);
  }

  private void line(String house, HeldUnit... units) {
    lines.add(
        new HeldLine(
            lines.size(),
            new WantedLine(house, "boathouse/sdc-omni-1", units.length, false),
            List.of(units)));
  }

  private static HeldUnit unit(
      String serial, long rate, Optional<Instant> outAt, Optional<Instant> inAt) {
    return held(serial, rate, true, SESSION.to(), outAt, inAt);
  }

  private static HeldUnit until(Instant lentTo, String serial, Optional<Instant> inAt) {
    return held(serial, 1400, true, lentTo, COLLECTED, inAt);
  }

  private static HeldUnit givenUp(String serial) {
    return held(serial, 1500, false, SESSION.to(), NOT_YET, NOT_YET);
  }

  private static HeldUnit held(
      String serial,
      long rate,
      boolean occupies,
      Instant lentTo,
      Optional<Instant> outAt,
      Optional<Instant> inAt) {
    return new HeldUnit(
        serial,
        Optional.empty(),
        rate,
        Optional.empty(),
        Optional.empty(),
        occupies,
        lentTo,
        SESSION,
        outAt,
        inAt);
  }

  private static Instant at(String local) {
    return LocalDateTime.parse(local).atZone(VIENNA).toInstant();
  }

  private static HouseTerms house(String id, String hours, String weekendDays, long minimum) {
    return new HouseTerms(
        id,
        id,
        VIENNA,
        Currency.getInstance("EUR"),
        OpeningHours.parse(hours),
        Duration.ZERO,
        true,
        new BigDecimal(weekendDays),
        minimum,
        1);
  }
}
