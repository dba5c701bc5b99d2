package org.standoff.kit.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;
import static org.standoff.kit.hold.OwnKit.at;
import static org.standoff.kit.hold.OwnKit.line;
import static org.standoff.kit.hold.OwnKit.period;
import static org.standoff.kit.hold.OwnKit.second;
import static org.standoff.kit.hold.OwnKit.wish;

import java.time.Duration;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standoff.fixture.Supposing;
import org.standoff.kit.Caller;
import org.standoff.kit.NotPermitted;
import org.standoff.kit.Precondition;
import org.standoff.kit.house.OpeningHours;

class HoldStepsTest {

  private static final Caller DESK = Callers.desk("north-desk");
  private static final Caller OTHER = Callers.desk("south-desk");

  private OwnKit kit;

  @BeforeEach
  void setUp() {
    kit = new OwnKit();
    kit.house("quay", Duration.ofHours(1));
    kit.house("mill", Duration.ZERO);
    kit.units("quay", "core/a", 1);
  }

  @AfterEach
  void tearDown() {
    kit.close();
  }

  /** What each step makes of a hold in each state; a dash where it is refused. */
  private static Map<HoldStep, String> outcomes(HoldState state) {
    String table =
        """
        state      confirm    release   extend     check-out  check-in
        waiting    -          released  waiting    -          -
        tentative  confirmed  released  tentative  -          -
        confirmed  -          released  confirmed  out        -
        out        -          -         out        -          returned
        returned   -          -         -          -          -
        released   -          -         -          -          -
        expired    -          -         -          -          -
        """;
    String[] row =
        table
            .lines()
            .filter(one -> one.startsWith(state.spelt()))
            .findFirst()
            .orElseThrow()
            .split("\\s+");
    Map<HoldStep, String> outcomes = new EnumMap<>(HoldStep.class);
    for (HoldStep step : HoldStep.values()) {
      outcomes.put(step, row[step.ordinal() + 1]);
    }
    return outcomes;
  }

  @ParameterizedTest
  @EnumSource
  void aHoldTakesTheStepsOfItsStateAndRefusesTheOthers(HoldState state) {
    Map<HoldStep, String> expected = outcomes(state);
    for (HoldStep step : HoldStep.values()) {
      String house = kit.house("house-" + step.ordinal(), Duration.ZERO);
      kit.units(house, "core/a", 1);
      kit.clockAt(Duration.ZERO);
      Hold hold = in(state, house);
      assertThat(hold.state()).isEqualTo(state);
      String outcome = expected.get(step);
      if (outcome.equals("-")) {
        assertThatThrownBy(() -> take(step, hold.id()))
            .as("%s of a hold that is %s", step, state)
            .isInstanceOfSatisfying(
                StepRefused.class, refused -> assertThat(refused.state()).isEqualTo(state));
        assertThat(kit.find(hold.id())).as("%s left alone", step).isEqualTo(hold);
      } else {
        take(step, hold.id());
        assertThat(kit.find(hold.id()).state().spelt())
            .as("%s of a hold that is %s", step, state)
            .isEqualTo(outcome);
        assertThat(kit.find(hold.id()).revision()).isEqualTo(hold.revision() + 1);
      }
    }
  }

  private Hold in(HoldState state, String house) {
    WantedLine wanted = line(house, "core/a", 1);
    HoldWish plain = wish("r of " + house, period(0, 2), wanted);
    return switch (state) {
      case WAITING -> {
        kit.confirmed(OTHER, wish("before " + house, period(0, 9), wanted));
        yield kit.hold(DESK, second("r of " + house, period(1, 3), wanted));
      }
      case TENTATIVE -> kit.hold(DESK, plain);
      case CONFIRMED -> kit.confirmed(DESK, plain);
      case OUT -> kit.out(DESK, plain);
      case RETURNED -> {
        UUID id = kit.out(DESK, plain).id();
        yield kit.service.house.checkIn(Callers.ADMIN, id, Set.of(), Supposing.NOTHING).hold();
      }
      case RELEASED ->
          kit.service.desk.release(DESK, kit.hold(DESK, plain).id(), Supposing.NOTHING);
      case EXPIRED -> {
        UUID id = kit.hold(DESK, plain).id();
        kit.clockAt(Duration.ofHours(2));
        yield kit.find(id);
      }
    };
  }

  private void take(HoldStep step, UUID id) {
    switch (step) {
      case CONFIRM -> kit.service.desk.confirm(DESK, id, Supposing.NOTHING);
      case RELEASE -> kit.service.desk.release(DESK, id, Supposing.NOTHING);
      case EXTEND -> kit.service.desk.extend(DESK, id, at(4), Supposing.NOTHING);
      case CHECK_OUT -> kit.service.house.checkOut(Callers.ADMIN, id, Supposing.NOTHING);
      case CHECK_IN -> kit.service.house.checkIn(Callers.ADMIN, id, Set.of(), Supposing.NOTHING);
    }
  }

  @Test
  void aHoldOfAnotherDeskIsNotThere() {
    UUID id = kit.out(OTHER, wish("r", period(0, 2), line("quay", "core/a", 1))).id();
    for (HoldStep step : Set.of(HoldStep.CONFIRM, HoldStep.RELEASE, HoldStep.EXTEND)) {
      assertThatThrownBy(() -> take(step, id)).isInstanceOf(HoldUnknown.class);
    }
    for (Caller stranger : new Caller[] {DESK, Callers.publisher("mill")}) {
      assertThatThrownBy(() -> kit.service.house.checkOut(stranger, id, Supposing.NOTHING))
          .isInstanceOf(HoldUnknown.class);
      assertThatThrownBy(() -> kit.service.house.checkIn(stranger, id, Set.of(), Supposing.NOTHING))
          .isInstanceOf(HoldUnknown.class);
    }
  }

  @Test
  void aHouseDoesNotDecideForTheDeskNorTheDeskForTheHouse() {
    UUID id = kit.confirmed(DESK, wish("r", period(0, 2), line("quay", "core/a", 1))).id();
    assertThatThrownBy(
            () -> kit.service.desk.release(Callers.publisher("quay"), id, Supposing.NOTHING))
        .isInstanceOf(NotPermitted.class);
    assertThatThrownBy(() -> kit.service.house.checkOut(DESK, id, Supposing.NOTHING))
        .isInstanceOf(NotPermitted.class);
    assertThat(kit.service.house.checkOut(Callers.publisher("quay"), id, Supposing.NOTHING).state())
        .isEqualTo(HoldState.OUT);
  }

  @Test
  void aStepSupposesTheRevisionThatItWasShown() {
    Hold hold = kit.hold(DESK, wish("r", period(0, 2), line("quay", "core/a", 1)));
    IllegalStateException stale = new IllegalStateException("stale");
    Precondition first =
        revision -> {
          if (revision.orElseThrow() != 1) {
            throw stale;
          }
        };
    kit.service.desk.confirm(DESK, hold.id(), first);
    assertThatThrownBy(() -> kit.service.desk.release(DESK, hold.id(), first)).isSameAs(stale);
    assertThat(kit.state(hold)).isEqualTo(HoldState.CONFIRMED);
  }

  @Test
  void anExtensionKeepsTheUnitsAndMovesTheirTurnRound() {
    Hold hold = kit.confirmed(DESK, wish("r", period(0, 2), line("quay", "core/a", 1)));
    Hold longer = kit.service.desk.extend(DESK, hold.id(), at(5), Supposing.NOTHING);
    assertThat(longer.period()).isEqualTo(period(0, 5));
    assertThat(longer.units()).extracting(HeldUnit::busy).containsExactly(period(0, 6));
    kit.hold(OTHER, wish("after", period(6, 7), line("quay", "core/a", 1)));
    assertThatThrownBy(() -> kit.service.desk.extend(DESK, hold.id(), at(5.5), Supposing.NOTHING))
        .isInstanceOf(UnitsTaken.class);
  }

  @Test
  void anExtensionIntoAnothersTimeSaysWhichUnitAndWhen() {
    Hold hold = kit.confirmed(DESK, wish("r", period(0, 2), line("quay", "core/a", 1)));
    Hold other = kit.hold(OTHER, wish("s", period(4, 6), line("quay", "core/a", 1)));
    UnitsTaken taken =
        catchThrowableOfType(
            UnitsTaken.class,
            () -> kit.service.desk.extend(DESK, hold.id(), at(4), Supposing.NOTHING));
    String serial = other.units().findFirst().orElseThrow().serial();
    assertThat(taken.conflicts()).containsExactly(new Conflict("quay", serial, at(4), at(7)));
    assertThat(kit.find(hold.id())).isEqualTo(hold);
    assertThat(kit.service.desk.extend(DESK, hold.id(), at(3), Supposing.NOTHING).period().to())
        .as("to the very moment, less the turn-round")
        .isEqualTo(at(3));
  }

  @Test
  void anExtensionIsLaterAndWhileTheHouseIsOpen() {
    kit.house("pier", "Europe/Vienna", OpeningHours.parse("tue 09:00-17:00"), Duration.ZERO, false);
    kit.units("pier", "core/a", 1);
    UUID id = kit.hold(DESK, wish("r", period(0, 2), line("pier", "core/a", 1))).id();
    assertThatThrownBy(() -> kit.service.desk.extend(DESK, id, at(2), Supposing.NOTHING))
        .isInstanceOf(WishRefused.class)
        .hasMessageContaining("later");
    assertThatThrownBy(() -> kit.service.desk.extend(DESK, id, at(8), Supposing.NOTHING))
        .isInstanceOf(WishRefused.class)
        .hasMessageContaining("'pier' is closed");
    assertThat(kit.service.desk.extend(DESK, id, at(4), Supposing.NOTHING).period().to())
        .as("17:00 in Vienna, the moment of closing")
        .isEqualTo(at(4));
  }

  @Test
  void whatIsCollectedEarlyIsBusyFromThen() {
    Hold hold = kit.confirmed(DESK, wish("r", period(3, 5), line("quay", "core/a", 1)));
    Hold out = kit.service.house.checkOut(Callers.publisher("quay"), hold.id(), Supposing.NOTHING);
    assertThat(out.units()).extracting(HeldUnit::busy).containsExactly(period(0, 6));
  }

  @Test
  void aUnitThatIsWithAnotherDeskCannotBeHandedOver() {
    kit.out(OTHER, wish("before", period(0, 2), line("quay", "core/a", 1)));
    Hold next = kit.confirmed(DESK, wish("r", period(3, 5), line("quay", "core/a", 1)));
    kit.clockAt(Duration.ofHours(4));
    UnitsTaken taken =
        catchThrowableOfType(
            UnitsTaken.class,
            () -> kit.service.house.checkOut(Callers.ADMIN, next.id(), Supposing.NOTHING));
    assertThat(taken.conflicts())
        .extracting(Conflict::from, Conflict::to)
        .as("the hold before, which is late")
        .containsExactly(tuple(at(0), at(3)));
  }

  @Test
  void aHoldThatIsOverIsNotCollectedAnyMore() {
    Hold hold = kit.confirmed(DESK, wish("r", period(1, 3), line("quay", "core/a", 1)));
    kit.clockAt(Duration.ofHours(3));
    assertThatThrownBy(
            () -> kit.service.house.checkOut(Callers.ADMIN, hold.id(), Supposing.NOTHING))
        .isInstanceOf(StepRefused.class)
        .hasMessageContaining("over");
  }

  @Test
  void eachHouseHandsOverAndTakesBackItsOwn() {
    kit.units("mill", "core/b", 1);
    Hold hold =
        kit.confirmed(
            DESK, wish("r", period(0, 3), line("quay", "core/a", 1), line("mill", "core/b", 1)));
    Caller quay = Callers.publisher("quay");
    Caller mill = Callers.publisher("mill");
    Hold seen = kit.service.house.checkOut(quay, hold.id(), Supposing.NOTHING);
    assertThat(seen.lines())
        .extracting(HeldLine::wanted)
        .containsExactly(line("quay", "core/a", 1));
    assertThatThrownBy(() -> kit.service.house.checkOut(quay, hold.id(), Supposing.NOTHING))
        .isInstanceOf(StepRefused.class);
    assertThatThrownBy(
            () -> kit.service.house.checkIn(mill, hold.id(), Set.of(), Supposing.NOTHING))
        .as("the mill's is not out")
        .isInstanceOf(StepRefused.class);
    kit.service.house.checkIn(quay, hold.id(), Set.of(), Supposing.NOTHING);
    assertThat(kit.state(hold)).as("the mill's is still to come").isEqualTo(HoldState.OUT);
    kit.service.house.checkOut(mill, hold.id(), Supposing.NOTHING);
    kit.service.house.checkIn(mill, hold.id(), Set.of(), Supposing.NOTHING);
    assertThat(kit.state(hold)).isEqualTo(HoldState.RETURNED);
    assertThat(kit.find(hold.id()).units()).allMatch(unit -> unit.inAt().isPresent());
  }

  @Test
  void whatNobodyCollectedIsLetGoOnceTheRestIsBack() {
    kit.units("quay", "core/a", 2);
    Hold hold = kit.confirmed(DESK, wish("r", period(0, 30), line("quay", "core/a", 3)));
    String[] serials = hold.units().map(HeldUnit::serial).toArray(String[]::new);
    kit.database.change(
        "update hold_unit set out_at = kit_now() where unit in (select id from unit where serial = any(?))",
        (Object) Arrays.copyOf(serials, 2));
    kit.database.change("update hold set state = 'out' where id = ?", hold.id());
    kit.service.house.checkIn(Callers.ADMIN, hold.id(), Set.of(serials[0]), Supposing.NOTHING);
    assertThat(kit.state(hold)).isEqualTo(HoldState.OUT);
    assertThatThrownBy(
            () ->
                kit.service.house.checkIn(
                    Callers.ADMIN, hold.id(), Set.of(serials[2]), Supposing.NOTHING))
        .isInstanceOf(WishRefused.class)
        .hasMessageContaining("not out");
    kit.service.house.checkIn(Callers.ADMIN, hold.id(), Set.of(serials[1]), Supposing.NOTHING);
    assertThat(kit.state(hold)).isEqualTo(HoldState.RETURNED);
    assertThat(kit.hold(OTHER, wish("s", period(2, 30), line("quay", "core/a", 3))).units())
        .hasSize(3);
  }

  private static final WantedLine QUAYS = line("quay", "core/a", 1);
  private static final WantedLine MILLS = line("mill", "core/a", 1);

  /** For a day, over two houses; the quay's unit is out. */
  private Hold halfCollected() {
    kit.units("mill", "core/a", 1);
    Hold hold = kit.confirmed(DESK, wish("both", period(0, 24), QUAYS, MILLS));
    return kit.service.house.checkOut(Callers.publisher("quay"), hold.id(), Supposing.NOTHING);
  }

  private Hold checkedIn(String house, Hold hold) {
    return kit.service
        .house
        .checkIn(Callers.publisher(house), hold.id(), Set.of(), Supposing.NOTHING)
        .hold();
  }

  @Test
  void aDeskGivesUpWhatNobodyCollectedAndTheHoldEndsWithWhatWas() {
    Hold hold = halfCollected();
    Hold waiting = kit.hold(OTHER, second("next", period(2, 4), MILLS));
    Hold left = kit.service.desk.release(DESK, hold.id(), Supposing.NOTHING);
    assertThat(left.state()).isEqualTo(HoldState.OUT);
    assertThat(kit.state(waiting)).as("the mill's unit is free").isEqualTo(HoldState.TENTATIVE);
    assertThatThrownBy(() -> kit.service.desk.release(DESK, hold.id(), Supposing.NOTHING))
        .isInstanceOf(StepRefused.class)
        .hasMessageContaining("All of it was collected");
    assertThat(checkedIn("quay", hold).state()).isEqualTo(HoldState.RETURNED);
  }

  @Test
  void aDeskEndsAHoldOfWhichAllThatWasCollectedIsBack() {
    Hold hold = halfCollected();
    assertThat(checkedIn("quay", hold).state()).as("the mill may yet").isEqualTo(HoldState.OUT);
    assertThat(kit.service.desk.release(DESK, hold.id(), Supposing.NOTHING).state())
        .isEqualTo(HoldState.RETURNED);
    assertThat(
            kit.database.rows(
                "select kind from event where hold = ? order by id",
                row -> row.getString("kind"),
                hold.id()))
        .endsWith("hold-out", "hold-changed", "hold-returned");
  }

  @Test
  void aHouseWhoseUnitsNobodyCollectedLetsThemGoOnceTheHoldIsOver() {
    Hold hold = halfCollected();
    checkedIn("quay", hold);
    assertThatThrownBy(() -> checkedIn("mill", hold))
        .as("they may yet be collected")
        .isInstanceOf(StepRefused.class);
    kit.clockAt(Duration.ofHours(24));
    assertThatThrownBy(() -> checkedIn("quay", hold))
        .as("not for the mill")
        .isInstanceOf(StepRefused.class);
    assertThat(checkedIn("mill", hold).state()).isEqualTo(HoldState.RETURNED);
  }

  @Test
  void whatIsBackAfterTheEndLeavesNothingToWaitFor() {
    Hold hold = halfCollected();
    kit.clockAt(Duration.ofHours(24));
    Hold ended = checkedIn("quay", hold);
    assertThat(ended.state()).isEqualTo(HoldState.RETURNED);
    assertThat(kit.hold(OTHER, wish("next", period(24, 25), MILLS)).state())
        .isEqualTo(HoldState.TENTATIVE);
  }

  @Test
  void aUnitInRepairIsNotHandedOverAndCanFollowOnceItIsMended() {
    String ill = kit.units("quay", "core/a", 1).get(0);
    Hold hold = kit.confirmed(DESK, wish("two", period(0, 9), line("quay", "core/a", 2)));
    kit.database.change("update unit set state = 'in-repair' where serial = ?", ill);
    assertThat(collected(hold)).hasSize(1).doesNotContain(ill);
    assertThatThrownBy(() -> collected(hold))
        .isInstanceOf(StepRefused.class)
        .hasMessageContaining("in repair");
    kit.database.change("update unit set state = 'available' where serial = ?", ill);
    assertThat(collected(hold)).hasSize(2).contains(ill);
  }

  /** Units that are out after one more check-out. */
  private List<String> collected(Hold hold) {
    return kit.service
        .house
        .checkOut(Callers.publisher("quay"), hold.id(), Supposing.NOTHING)
        .units()
        .filter(unit -> unit.outAt().isPresent())
        .map(HeldUnit::serial)
        .toList();
  }
}
