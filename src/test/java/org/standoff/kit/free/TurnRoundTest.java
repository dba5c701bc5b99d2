package org.standoff.kit.free;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.standoff.kit.hold.OwnKit.line;
import static org.standoff.kit.hold.OwnKit.period;
import static org.standoff.kit.hold.OwnKit.wish;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Supposing;
import org.standoff.kit.Caller;
import org.standoff.kit.Period;
import org.standoff.kit.hold.Callers;
import org.standoff.kit.hold.Hold;
import org.standoff.kit.hold.OwnKit;
import org.standoff.kit.hold.Shortage;
import org.standoff.kit.stock.KitUnit;
import org.standoff.kit.stock.UnitState;

class TurnRoundTest {

  private static final Caller DESK = Callers.desk("north-desk");

  private OwnKit kit;

  @BeforeEach
  void setUp() {
    kit = new OwnKit();
    kit.house("quay", Duration.ofHours(4));
  }

  @AfterEach
  void tearDown() {
    kit.close();
  }

  @Test
  void aUnitThatBecomesAnotherMicrophoneIsTurnedRoundAllTheSame() {
    String serial = kit.units("quay", "core/a", 1).get(0);
    Hold hold = kit.out(DESK, wish("first", period(0, 3), line("quay", "core/a", 1)));
    kit.clockAt(Duration.ofHours(2));
    kit.service.house.checkIn(Callers.ADMIN, hold.id(), Set.of(), Supposing.NOTHING);
    kit.service.wholeKit.publish(
        Callers.ADMIN,
        "quay",
        List.of(new KitUnit(serial, "core/b", null, UnitState.AVAILABLE, 1000, "", null, null)),
        false,
        Supposing.NOTHING);
    Period inTurnRound = period(3, 4);
    assertThat(enough(inTurnRound)).isFalse();
    assertThatThrownBy(() -> kit.hold(DESK, wish("second", inTurnRound, line("quay", "core/b", 1))))
        .isInstanceOf(Shortage.class);
    assertThat(enough(period(6, 7))).isTrue();
  }

  private boolean enough(Period period) {
    return new FreeKit(kit.service.transactions)
        .find(
            List.of(new WantedLine("core/b", 1, false)),
            period,
            List.of(kit.houses.find("quay").orElseThrow()),
            Alternatives.NONE)
        .lines()
        .get(0)
        .enough();
  }
}
