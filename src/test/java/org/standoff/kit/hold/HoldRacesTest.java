package org.standoff.kit.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.standoff.kit.hold.OwnKit.at;
import static org.standoff.kit.hold.OwnKit.line;
import static org.standoff.kit.hold.OwnKit.period;
import static org.standoff.kit.hold.OwnKit.second;
import static org.standoff.kit.hold.OwnKit.wish;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standoff.fixture.Supposing;
import org.standoff.kit.Caller;
import org.standoff.kit.Model;
import org.standoff.kit.ModelLocks;
import org.standoff.kit.Sql;

/** Two who meet at one hold: the test is the one, and stays in the way for as long as it likes. */
class HoldRacesTest {

  private static final Caller FIRST = Callers.desk("first-desk");
  private static final Caller DESK = Callers.desk("north-desk");
  private static final Model MODEL = new Model("quay", "core/a");
  private static final WantedLine ONE = line("quay", "core/a", 1);

  private final ExecutorService others = Executors.newSingleThreadExecutor();
  private OwnKit kit;

  @BeforeEach
  void setUp() {
    kit = new OwnKit();
    kit.house("quay", Duration.ofHours(1));
    kit.units("quay", "core/a", 1);
  }

  @AfterEach
  void tearDown() {
    others.shutdownNow();
    kit.close();
  }

  private interface InTheWay {
    void lock(Connection connection) throws SQLException;
  }

  /**
   * @param waited whether the work had to wait for the test
   */
  private record Meeting<T>(Future<T> work, boolean waited) {}

  /** Starts the work and lets go of the lock once the work waits for it, or got through. */
  private <T> Meeting<T> meet(InTheWay way, Callable<T> work, Runnable whileItWaits)
      throws SQLException {
    try (Connection connection = kit.database.connect()) {
      connection.setAutoCommit(false);
      way.lock(connection);
      Future<T> started = others.submit(work);
      boolean waits = somebodyWaits();
      while (!waits && !started.isDone()) {
        Thread.onSpinWait();
        waits = somebodyWaits();
      }
      whileItWaits.run();
      connection.rollback();
      return new Meeting<>(started, waits);
    }
  }

  private boolean somebodyWaits() {
    return kit.database.count(
            """
            select count(*) from pg_stat_activity
            where datname = current_database() and wait_event_type = 'Lock'
            """)
        > 0;
  }

  @Test
  void aSecondHoldThatSomebodyIsAboutToChangeIsNotPassedOver() throws Exception {
    Hold first = kit.confirmed(FIRST, wish("first", period(0, 9), ONE));
    Hold waiting = kit.hold(DESK, second("r", period(3, 5), ONE));
    meet(
            connection ->
                Sql.list(
                    connection,
                    "select from hold where id = ? for update",
                    row -> true,
                    waiting.id()),
            () -> kit.service.desk.release(FIRST, first.id(), Supposing.NOTHING),
            () -> {})
        .work()
        .get();
    assertThat(kit.state(waiting)).isEqualTo(HoldState.TENTATIVE);
  }

  /** What a desk may do with a hold of which the time is up in this moment. */
  private enum Late {
    CONFIRM,
    EXTEND
  }

  @ParameterizedTest
  @EnumSource(Late.class)
  void aHoldThatExpiresWhileItsUnitsAreBeingTakenAwayStaysExpired(Late step) throws Exception {
    Hold hold = kit.hold(DESK, wish("r", period(5, 9), ONE));
    Meeting<Hold> late =
        meet(
            connection -> ModelLocks.take(connection, List.of(MODEL)),
            () ->
                step == Late.CONFIRM
                    ? kit.service.desk.confirm(DESK, hold.id(), Supposing.NOTHING)
                    : kit.service.desk.extend(DESK, hold.id(), at(10), Supposing.NOTHING),
            () -> kit.clockAt(Duration.ofHours(2)));
    assertThatThrownBy(late.work()::get)
        .isInstanceOf(ExecutionException.class)
        .cause()
        .isInstanceOfSatisfying(
            StepRefused.class, refused -> assertThat(refused.state()).isEqualTo(HoldState.EXPIRED));
    assertThat(kit.state(hold)).isEqualTo(HoldState.EXPIRED);
  }

  @Test
  void whoeverExtendsAHoldThatWaitsAsksForNoUnits() throws Exception {
    kit.confirmed(FIRST, wish("first", period(0, 9), ONE));
    Hold waiting = kit.hold(DESK, second("r", period(3, 5), ONE));
    Meeting<Hold> longer =
        meet(
            connection -> ModelLocks.take(connection, List.of(MODEL)),
            () -> kit.service.desk.extend(DESK, waiting.id(), at(6), Supposing.NOTHING),
            () -> {});
    assertThat(longer.waited()).isFalse();
    assertThat(longer.work().get().period()).isEqualTo(period(3, 6));
  }
}
