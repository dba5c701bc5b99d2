package org.standoff.kit.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.standoff.kit.hold.OwnKit.line;
import static org.standoff.kit.hold.OwnKit.period;
import static org.standoff.kit.hold.OwnKit.wish;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Supposing;
import org.standoff.kit.Caller;
import org.standoff.kit.Model;
import org.standoff.kit.ModelLocks;
import org.standoff.kit.Sql;

class ExpiryTest {

  private static final Caller DESK = Callers.desk("north-desk");
  private static final Caller OTHER = Callers.desk("south-desk");
  private static final WantedLine ONE = line("quay", "core/a", 1);

  private OwnKit kit;

  @BeforeEach
  void setUp() {
    kit = new OwnKit();
    kit.house("quay", Duration.ofHours(1));
    kit.units("quay", "core/a", 1);
  }

  @AfterEach
  void tearDown() {
    kit.close();
  }

  @Test
  void aTentativeHoldFallsAtItsMomentByTheClockOfTheDatabase() {
    Hold hold = kit.hold(DESK, wish("r", period(5, 9), ONE));
    kit.clockAt(Duration.ofHours(2).minusMillis(1));
    assertThat(kit.state(hold)).isEqualTo(HoldState.TENTATIVE);
    kit.clockAt(Duration.ofHours(2));
    assertThat(kit.state(hold)).isEqualTo(HoldState.EXPIRED);
    assertThatThrownBy(() -> kit.service.desk.confirm(DESK, hold.id(), Supposing.NOTHING))
        .isInstanceOf(StepRefused.class);
  }

  @Test
  void whoBooksAfterwardsHasTheUnits() {
    kit.hold(DESK, wish("r", period(5, 9), ONE));
    kit.clockAt(Duration.ofHours(2));
    assertThat(kit.hold(OTHER, wish("s", period(5, 9), ONE)).units()).hasSize(1);
  }

  @Test
  void aBookingThatFailsDoesNotBringBackWhatFell() {
    Hold fallen = kit.hold(DESK, wish("r", period(5, 9), ONE));
    kit.clockAt(Duration.ofHours(2));
    assertThatThrownBy(() -> kit.hold(OTHER, wish("s", period(5, 9), line("quay", "core/a", 2))))
        .isInstanceOf(Shortage.class);
    assertThat(
            kit.database.rows(
                "select state from hold where id = ?", row -> row.getString(1), fallen.id()))
        .containsExactly("expired");
  }

  @Test
  void whoAsksWhatIsFreeLeavesItToWhoeverLetsFallAlready() throws SQLException {
    Hold hold = kit.hold(DESK, wish("r", period(5, 9), ONE));
    kit.clockAt(Duration.ofHours(2));
    try (Connection another = kit.database.connect()) {
      Sql.list(another, "select pg_advisory_lock(hashtextextended('what is due', 0))", row -> true);
      kit.service.expiry.settleUnlessBusy();
      assertThat(stored(hold)).isEqualTo("tentative");
    }
    kit.service.expiry.settleUnlessBusy();
    assertThat(stored(hold)).isEqualTo("expired");
  }

  @Test
  void whoAsksWhatIsFreeDoesNotFailWhereOthersHaveLockedWhatWouldFall() throws SQLException {
    Hold waiting = secondInLine();
    try (Connection another = kit.database.connect()) {
      another.setAutoCommit(false);
      ModelLocks.take(another, List.of(new Model("quay", "core/a")));
      kit.service.expiry.settleUnlessBusy();
      assertThat(stored(waiting)).isEqualTo("waiting");
    }
    kit.service.expiry.settleUnlessBusy();
    assertThat(stored(waiting)).isEqualTo("tentative");
  }

  /** Waits for a hold that is due. */
  private Hold secondInLine() {
    kit.hold(DESK, wish("r", period(5, 9), ONE));
    Hold waiting = kit.hold(OTHER, OwnKit.second("s", period(5, 9), ONE));
    kit.clockAt(Duration.ofHours(2));
    return waiting;
  }

  private String stored(Hold hold) {
    return kit.database
        .rows("select state from hold where id = ?", row -> row.getString(1), hold.id())
        .get(0);
  }

  @Test
  void theAuditSaysThatTheClockDidIt() {
    Hold hold = kit.hold(DESK, wish("r", period(5, 9), ONE));
    kit.clockAt(Duration.ofHours(2));
    kit.find(hold.id());
    assertThat(
            kit.database.rows(
                "select actor from audit where table_name = 'hold' and row_key = ? order by id",
                row -> row.getString(1),
                hold.id().toString()))
        .containsExactly("north-desk", "clock");
  }

  @Test
  void aConfirmedOrCollectedHoldNeverFalls() {
    Hold confirmed = kit.confirmed(DESK, wish("r", period(5, 9), ONE));
    Hold out = kit.out(DESK, wish("s", period(0, 3), ONE));
    kit.clockAt(Duration.ofDays(30));
    assertThat(Set.of(kit.state(confirmed), kit.state(out)))
        .containsExactlyInAnyOrder(HoldState.CONFIRMED, HoldState.OUT);
  }
}
