package org.standoff.kit.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;
import static org.standoff.kit.hold.OwnKit.at;
import static org.standoff.kit.hold.OwnKit.line;
import static org.standoff.kit.hold.OwnKit.matched;
import static org.standoff.kit.hold.OwnKit.period;
import static org.standoff.kit.hold.OwnKit.second;
import static org.standoff.kit.hold.OwnKit.wish;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standoff.kit.Caller;
import org.standoff.kit.NotPermitted;
import org.standoff.kit.Period;
import org.standoff.kit.house.OpeningHours;

class HoldsTest {

  private static final Caller DESK = Callers.desk("north-desk");
  private static final Caller OTHER = Callers.desk("south-desk");

  private OwnKit kit;

  @BeforeEach
  void setUp() {
    kit = new OwnKit();
    kit.house("quay", Duration.ofHours(1));
    kit.house("mill", Duration.ZERO);
  }

  @AfterEach
  void tearDown() {
    kit.close();
  }

  @Test
  void everyLineOfAHoldHasItsUnitsFromEachHouse() {
    kit.units("quay", "core/a", 3);
    kit.units("mill", "core/b", 1);
    Hold hold =
        kit.hold(
            DESK, wish("r", period(1, 5), line("quay", "core/a", 2), line("mill", "core/b", 1)));
    assertThat(hold.state()).isEqualTo(HoldState.TENTATIVE);
    assertThat(hold.expiresAt()).contains(at(2));
    assertThat(hold.lines()).extracting(held -> held.units().size()).containsExactly(2, 1);
    assertThat(hold.lines().get(0).units())
        .as("busy to the end of turn-round, which the house counts after the return")
        .extracting(HeldUnit::busy)
        .containsOnly(period(1, 6));
    assertThat(hold.lines().get(1).units()).extracting(HeldUnit::busy).containsOnly(period(1, 5));
    assertThat(kit.find(hold.id())).isEqualTo(hold);
  }

  @Test
  void nothingIsHeldWhereOneLineIsShort() {
    kit.units("quay", "core/a", 3);
    kit.units("mill", "core/b", 1);
    Shortage shortage =
        catchThrowableOfType(
            Shortage.class,
            () ->
                kit.hold(
                    DESK,
                    wish("r", period(1, 5), line("quay", "core/a", 2), line("mill", "core/b", 4))));
    assertThat(shortage.shortfalls())
        .containsExactly(new Shortfall(1, line("mill", "core/b", 4), 1));
    assertThat(kit.database.count("select count(*) from hold")).isZero();
    assertThat(kit.database.count("select count(*) from hold_unit")).isZero();
    assertThat(kit.database.count("select count(*) from event where hold is not null")).isZero();
  }

  @Test
  void endsThatMeetDoNotClash() {
    kit.units("mill", "core/b", 1);
    kit.hold(DESK, wish("first", period(1, 3), line("mill", "core/b", 1)));
    kit.hold(DESK, wish("next", period(3, 5), line("mill", "core/b", 1)));
    assertThatThrownBy(
            () ->
                kit.hold(
                    DESK,
                    wish(
                        "into",
                        new Period(at(5).minusSeconds(1), at(6)),
                        line("mill", "core/b", 1))))
        .isInstanceOf(Shortage.class);
  }

  @Test
  void aUnitIsNotLentBeforeItIsTurnedRound() {
    kit.units("quay", "core/a", 1);
    kit.hold(DESK, wish("first", period(1, 3), line("quay", "core/a", 1)));
    assertThatThrownBy(
            () -> kit.hold(DESK, wish("close", period(3.9, 5), line("quay", "core/a", 1))))
        .isInstanceOf(Shortage.class);
    kit.hold(DESK, wish("after", period(4, 5), line("quay", "core/a", 1)));
  }

  @Test
  void aMatchedLineTakesOneWholeGroupOfItsSize() {
    kit.units("quay", "core/a", 4);
    List<String> three = kit.units("quay", "core/a", 3, Optional.of("three"));
    List<String> pair = kit.units("quay", "core/a", 2, Optional.of("pair"));
    Hold hold = kit.hold(DESK, wish("r", period(1, 2), matched("quay", "core/a", 2)));
    assertThat(hold.units()).extracting(HeldUnit::serial).containsExactlyElementsOf(pair);
    Hold whole = kit.hold(DESK, wish("s", period(1, 2), matched("quay", "core/a", 3)));
    assertThat(whole.units()).extracting(HeldUnit::serial).containsExactlyElementsOf(three);
    assertThatThrownBy(() -> kit.hold(DESK, wish("t", period(1, 2), matched("quay", "core/a", 2))))
        .isInstanceOf(Shortage.class);
  }

  @Test
  void aGroupIsNotBrokenForALineThatNeedsFewerThanItHas() {
    kit.units("quay", "core/a", 2, Optional.of("pair"));
    Shortage shortage =
        catchThrowableOfType(
            Shortage.class,
            () -> kit.hold(DESK, wish("r", period(1, 2), line("quay", "core/a", 1))));
    assertThat(shortage.shortfalls()).extracting(Shortfall::freeCount).containsExactly(0);
    kit.units("quay", "core/a", 1);
    assertThat(kit.hold(DESK, wish("r", period(1, 2), line("quay", "core/a", 3))).units())
        .hasSize(3);
  }

  @Test
  void aGroupWithAMemberInRepairIsNotLent() {
    List<String> pair = kit.units("quay", "core/a", 2, Optional.of("pair"));
    kit.database.change("update unit set state = 'in-repair' where serial = ?", pair.get(1));
    assertThatThrownBy(() -> kit.hold(DESK, wish("r", period(1, 2), matched("quay", "core/a", 2))))
        .isInstanceOf(Shortage.class);
    assertThatThrownBy(() -> kit.hold(DESK, wish("s", period(1, 2), line("quay", "core/a", 1))))
        .isInstanceOf(Shortage.class);
  }

  @Test
  void aUnitThatIsNotBackInTimeIsPromisedToNobody() {
    kit.units("quay", "core/a", 1);
    kit.out(OTHER, wish("late", period(0, 3), line("quay", "core/a", 1)));
    assertThat(
            kit.service
                .holds
                .rehearse(DESK, wish("r", period(30, 40), line("quay", "core/a", 1)))
                .units())
        .hasSize(1);
    kit.clockAt(Duration.ofHours(4));
    assertThatThrownBy(() -> kit.hold(DESK, wish("r", period(30, 40), line("quay", "core/a", 1))))
        .as("with a desk beyond its end, and nobody knows until when")
        .isInstanceOf(Shortage.class);
  }

  @Test
  void everyFaultOfAWishIsToldAtItsLine() {
    kit.house("pier", "Europe/Vienna", OpeningHours.parse("wed 09:00-17:00"), Duration.ZERO, false);
    WishRefused refused =
        catchThrowableOfType(
            WishRefused.class,
            () ->
                kit.hold(
                    DESK,
                    wish(
                        "r",
                        period(1, 2),
                        line("nobody", "core/a", 1),
                        line("pier", "core/a", 1))));
    assertThat(refused.faults())
        .extracting(WishFault::place, WishFault::line, WishFault::allowed)
        .containsExactly(
            tuple(WishFault.Place.HOUSE, OptionalInt.of(0), Optional.empty()),
            tuple(WishFault.Place.FROM, OptionalInt.of(1), Optional.of("2026-12-02T08:00:00Z")),
            tuple(WishFault.Place.TO, OptionalInt.of(1), Optional.of("2026-12-02T08:00:00Z")));
  }

  @Test
  void whatGoesIntoADropBoxIsCheckedInAtTheNextOpening() {
    kit.house(
        "pier",
        "Europe/Vienna",
        OpeningHours.parse("tue 09:00-17:00, wed 09:00-17:00"),
        Duration.ofHours(1),
        true);
    kit.units("pier", "core/a", 1);
    Hold hold = kit.hold(DESK, wish("r", period(1, 9), line("pier", "core/a", 1)));
    assertThat(hold.units())
        .as("back on Tuesday at 22:00, opened on Wednesday at 09:00 in Vienna, an hour more")
        .extracting(HeldUnit::busy)
        .containsExactly(period(1, 21));
  }

  @Test
  void aHoldThatIsOverOrLongerThanAYearIsRefused() {
    kit.units("mill", "core/b", 1);
    assertThatThrownBy(() -> kit.hold(DESK, wish("r", period(-3, 0), line("mill", "core/b", 1))))
        .isInstanceOf(WishRefused.class)
        .hasMessageContaining("over already");
    assertThatThrownBy(
            () -> kit.hold(DESK, wish("r", period(0, 366 * 24 + 1), line("mill", "core/b", 1))))
        .isInstanceOf(WishRefused.class)
        .hasMessageContaining("at most 366 days");
    kit.hold(DESK, wish("r", period(0, 366 * 24), line("mill", "core/b", 1)));
  }

  @Test
  void aReferenceIsUniqueForADeskAndSaysWhichHoldHasIt() {
    kit.units("mill", "core/b", 3);
    Hold first = kit.hold(DESK, wish("session-7", period(0, 1), line("mill", "core/b", 1)));
    ReferenceTaken taken =
        catchThrowableOfType(
            ReferenceTaken.class,
            () -> kit.hold(DESK, wish("session-7", period(5, 6), line("mill", "core/b", 1))));
    assertThat(taken.hold()).isEqualTo(first.id());
    kit.hold(OTHER, wish("session-7", period(0, 1), line("mill", "core/b", 1)));
  }

  @Test
  void aRehearsalAnswersTheSameAndHoldsNothing() {
    kit.units("mill", "core/b", 1);
    HoldWish wanted = wish("r", period(1, 2), line("mill", "core/b", 1));
    Hold rehearsed = kit.service.holds.rehearse(DESK, wanted);
    assertThat(rehearsed.units()).hasSize(1);
    assertThat(kit.database.count("select count(*) from hold")).isZero();
    Hold held = kit.hold(DESK, wanted);
    assertThat(held.lines()).isEqualTo(rehearsed.lines());
    assertThatThrownBy(
            () ->
                kit.service.holds.rehearse(
                    DESK, wish("s", period(1, 2), line("mill", "core/b", 1))))
        .isInstanceOf(Shortage.class);
    assertThat(
            kit.service
                .holds
                .rehearse(DESK, second("s", period(1, 2), line("mill", "core/b", 1)))
                .state())
        .isEqualTo(HoldState.WAITING);
  }

  @Test
  void whoOnlyPublishesMayNotHold() {
    assertThatThrownBy(
            () ->
                kit.hold(
                    Callers.publisher("mill"), wish("r", period(1, 2), line("mill", "core/b", 1))))
        .isInstanceOf(NotPermitted.class);
  }
}
