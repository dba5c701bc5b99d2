package org.standoff.kit.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standoff.kit.hold.OwnKit.at;
import static org.standoff.kit.hold.OwnKit.line;
import static org.standoff.kit.hold.OwnKit.period;
import static org.standoff.kit.hold.OwnKit.wish;

import java.time.Duration;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Supposing;
import org.standoff.kit.Caller;
import org.standoff.kit.Period;

class DiaryTest {

  private static final Caller DESK = Callers.desk("north-desk");
  private static final Caller OTHER = Callers.desk("south-desk");
  private static final WantedLine ONE = line("quay", "core/a", 1);

  private OwnKit kit;
  private String serial;

  @BeforeEach
  void setUp() {
    kit = new OwnKit();
    kit.house("quay", Duration.ofHours(1));
    kit.house("mill", Duration.ofHours(1));
    serial = kit.units("quay", "core/a", 1).get(0);
    kit.hold(DESK, wish("a", period(1, 3), ONE));
    kit.hold(OTHER, wish("b", period(4, 6), ONE));
    kit.hold(DESK, wish("c", period(8, 9), ONE));
  }

  @AfterEach
  void tearDown() {
    kit.close();
  }

  private List<Diary.Entry> diary(Optional<Caller> caller, Period window) {
    return kit.service.diary.of(caller, "quay", serial, window, Optional.empty(), 10).orElseThrow();
  }

  @Test
  void everybodySeesWhenAUnitIsBusy() {
    assertThat(diary(Optional.empty(), period(0, 100)))
        .extracting(Diary.Entry::busy)
        .containsExactly(period(1, 4), period(4, 7), period(8, 10));
    assertThat(diary(Optional.empty(), period(0, 100))).allMatch(entry -> entry.hold().isEmpty());
  }

  @Test
  void onlyTheDeskAndTheHouseSeeWhose() {
    assertThat(diary(Optional.of(DESK), period(0, 100)))
        .extracting(entry -> entry.hold().map(Diary.Holder::reference).orElse("-"))
        .containsExactly("a", "-", "c");
    assertThat(diary(Optional.of(Callers.publisher("quay")), period(0, 100)))
        .extracting(entry -> entry.hold().map(Diary.Holder::reference).orElse("-"))
        .containsExactly("a", "b", "c");
    assertThat(diary(Optional.of(Callers.publisher("mill")), period(0, 100)))
        .allMatch(entry -> entry.hold().isEmpty());
  }

  @Test
  void aPeriodThatOnlyMeetsAPromiseDoesNotTouchIt() {
    assertThat(diary(Optional.empty(), period(7, 8))).isEmpty();
    assertThat(diary(Optional.empty(), period(6, 8))).hasSize(1);
  }

  @Test
  void itGoesOnBehindTheLastOneThatIsKnown() {
    assertThat(
            kit.service
                .diary
                .of(Optional.empty(), "quay", serial, period(0, 100), Optional.of(at(1)), 1)
                .orElseThrow())
        .extracting(Diary.Entry::busy)
        .containsExactly(period(4, 7));
  }

  @Test
  void aReleasedHoldIsGoneFromIt() {
    Hold last = kit.hold(DESK, wish("d", period(20, 21), ONE));
    kit.service.desk.release(DESK, last.id(), Supposing.NOTHING);
    assertThat(diary(Optional.empty(), period(19, 24))).isEmpty();
  }

  @Test
  void anUnknownUnitHasNone() {
    assertThat(
            kit.service.diary.of(
                Optional.empty(), "mill", serial, period(0, 1), Optional.empty(), 1))
        .isEmpty();
  }
}
