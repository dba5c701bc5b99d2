package org.standoff.kit.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standoff.kit.hold.OwnKit.at;
import static org.standoff.kit.hold.OwnKit.line;
import static org.standoff.kit.hold.OwnKit.period;
import static org.standoff.kit.hold.OwnKit.second;
import static org.standoff.kit.hold.OwnKit.wish;

import java.time.Duration;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Supposing;
import org.standoff.kit.Caller;
import org.standoff.kit.Model;

class SecondHoldsTest {

  private static final Caller FIRST = Callers.desk("first-desk");
  private static final Caller DESK = Callers.desk("north-desk");
  private static final WantedLine ONE = line("quay", "core/a", 1);
  private static final WantedLine TWO = line("quay", "core/a", 2);

  private OwnKit kit;

  @BeforeEach
  void setUp() {
    kit = new OwnKit();
    kit.house("quay", Duration.ofHours(1));
    kit.house("mill", Duration.ZERO);
    kit.units("quay", "core/a", 2);
  }

  @AfterEach
  void tearDown() {
    kit.close();
  }

  @Test
  void aSecondHoldHasNoUnitsAndFallsWhenItsTurnNeverCame() {
    kit.confirmed(FIRST, wish("first", period(0, 9), TWO));
    Hold waiting = kit.hold(DESK, second("r", period(3, 5), ONE));
    assertThat(waiting.state()).isEqualTo(HoldState.WAITING);
    assertThat(waiting.units()).isEmpty();
    assertThat(waiting.expiresAt()).contains(at(3));
    kit.clockAt(Duration.ofHours(3));
    assertThat(kit.state(waiting)).isEqualTo(HoldState.EXPIRED);
  }

  @Test
  void aReleaseMovesItUpWithTimeOfItsOwnToConfirm() {
    Hold first = kit.confirmed(FIRST, wish("first", period(0, 9), TWO));
    Hold waiting = kit.hold(DESK, second("r", period(24, 30), TWO));
    assertThat(waiting.state()).as("there is room").isEqualTo(HoldState.TENTATIVE);
    Hold next = kit.hold(DESK, second("s", period(8, 12), TWO));
    assertThat(next.state()).isEqualTo(HoldState.WAITING);
    kit.clockAt(Duration.ofHours(1));
    kit.service.desk.release(FIRST, first.id(), Supposing.NOTHING);
    Hold promoted = kit.find(next.id());
    assertThat(promoted.state()).isEqualTo(HoldState.TENTATIVE);
    assertThat(promoted.expiresAt()).as("two hours from now").contains(at(3));
    assertThat(promoted.units()).extracting(HeldUnit::busy).containsOnly(period(8, 13)).hasSize(2);
    assertThat(promoted.revision()).isEqualTo(2);
    assertThat(promoted.madeAt()).isEqualTo(next.madeAt());
  }

  @Test
  void theFirstInLineIsServedFirst() {
    Hold first = kit.confirmed(FIRST, wish("first", period(0, 9), TWO));
    Hold early = kit.hold(DESK, second("early", period(2, 5), TWO));
    kit.clockAt(Duration.ofMinutes(1));
    Hold late = kit.hold(DESK, second("late", period(2, 5), TWO));
    kit.service.desk.release(FIRST, first.id(), Supposing.NOTHING);
    assertThat(kit.state(early)).isEqualTo(HoldState.TENTATIVE);
    assertThat(kit.state(late)).isEqualTo(HoldState.WAITING);
    kit.service.desk.release(DESK, early.id(), Supposing.NOTHING);
    assertThat(kit.state(late)).isEqualTo(HoldState.TENTATIVE);
  }

  @Test
  void itMovesUpWholeOrNotAtAllAndLetsTheNextTry() {
    kit.units("mill", "core/b", 1);
    Hold first = kit.confirmed(FIRST, wish("first", period(0, 9), TWO));
    kit.confirmed(FIRST, wish("mill", period(0, 9), line("mill", "core/b", 1)));
    Hold both = kit.hold(DESK, second("both", period(2, 5), TWO, line("mill", "core/b", 1)));
    kit.clockAt(Duration.ofMinutes(1));
    Hold one = kit.hold(DESK, second("one", period(2, 5), ONE));
    kit.service.desk.release(FIRST, first.id(), Supposing.NOTHING);
    assertThat(kit.find(both.id())).as("the mill has none yet").isEqualTo(both);
    assertThat(kit.state(one)).isEqualTo(HoldState.TENTATIVE);
  }

  @Test
  void anExpiryMovesItUpBeforeAnybodyElseIsServed() {
    Hold first = kit.hold(FIRST, wish("first", period(0, 9), TWO));
    Hold waiting = kit.hold(DESK, second("r", period(3, 5), TWO));
    kit.clockAt(Duration.ofHours(2));
    Hold newcomer = kit.hold(Callers.desk("new-desk"), second("n", period(3, 5), TWO));
    assertThat(newcomer.state()).isEqualTo(HoldState.WAITING);
    assertThat(kit.state(first)).isEqualTo(HoldState.EXPIRED);
    assertThat(kit.state(waiting)).isEqualTo(HoldState.TENTATIVE);
    assertThat(kit.find(waiting.id()).expiresAt()).contains(at(4));
  }

  @Test
  void anEarlyReturnMovesItUpOnceTheUnitsAreTurnedRound() {
    Hold first = kit.out(FIRST, wish("first", period(0, 20), TWO));
    Hold soon = kit.hold(DESK, second("soon", period(4.5, 6), TWO));
    Hold later = kit.hold(DESK, second("later", period(5, 7), TWO));
    kit.clockAt(Duration.ofHours(4));
    kit.service.house.checkIn(Callers.ADMIN, first.id(), Set.of(), Supposing.NOTHING);
    assertThat(kit.state(soon)).as("they are being turned round").isEqualTo(HoldState.WAITING);
    assertThat(kit.state(later)).isEqualTo(HoldState.TENTATIVE);
  }

  @Test
  void aUnitThatIsMendedMovesItUp() {
    kit.database.change("update unit set state = 'in-repair'");
    Hold waiting = kit.hold(DESK, second("r", period(3, 5), TWO));
    kit.database.change("update unit set state = 'available'");
    kit.freed(new Model("quay", "core/a"));
    assertThat(kit.state(waiting)).isEqualTo(HoldState.TENTATIVE);
  }

  @Test
  void anExtensionThatPutsALateUnitRightMovesUpWhoWaitsForItAfterwards() {
    Hold late = kit.out(FIRST, wish("late", period(0, 2), TWO));
    kit.clockAt(Duration.ofHours(4));
    Hold waiting = kit.hold(DESK, second("r", period(30, 31), ONE));
    assertThat(waiting.state()).as("nobody knows when it is back").isEqualTo(HoldState.WAITING);
    kit.service.desk.extend(FIRST, late.id(), at(20), Supposing.NOTHING);
    assertThat(kit.state(waiting)).as("known again").isEqualTo(HoldState.TENTATIVE);
  }

  @Test
  void aWaitingHoldCanBeGivenUpAndItsPlaceIsGone() {
    Hold first = kit.confirmed(FIRST, wish("first", period(0, 9), TWO));
    Hold waiting = kit.hold(DESK, second("r", period(3, 5), ONE));
    kit.service.desk.release(DESK, waiting.id(), Supposing.NOTHING);
    kit.service.desk.release(FIRST, first.id(), Supposing.NOTHING);
    assertThat(kit.state(waiting)).isEqualTo(HoldState.RELEASED);
    assertThat(kit.find(waiting.id()).units()).isEmpty();
  }
}
