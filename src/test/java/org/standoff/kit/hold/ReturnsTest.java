package org.standoff.kit.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standoff.kit.hold.OwnKit.at;
import static org.standoff.kit.hold.OwnKit.line;
import static org.standoff.kit.hold.OwnKit.period;
import static org.standoff.kit.hold.OwnKit.wish;

import java.time.Duration;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Supposing;
import org.standoff.kit.Caller;

class ReturnsTest {

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
  void aLateReturnShowsWhomItHits() {
    Hold late = kit.out(DESK, wish("late", period(0, 4), ONE));
    Hold hit = kit.confirmed(OTHER, wish("next", period(6, 8), ONE));
    Hold spared = kit.confirmed(OTHER, wish("after", period(10, 12), ONE));
    kit.clockAt(Duration.ofHours(7));
    CheckedIn in = kit.service.house.checkIn(Callers.ADMIN, late.id(), Set.of(), Supposing.NOTHING);
    String serial = spared.units().findFirst().orElseThrow().serial();
    assertThat(in.hits())
        .as("back at 7 and turned round at 8, while 'next' began at 6")
        .containsExactly(
            new CheckedIn.Hit(
                hit.id(), "south-desk", "next", new Conflict("quay", serial, at(6), at(9))));
    assertThat(in.hold().state()).isEqualTo(HoldState.RETURNED);
    assertThat(
            kit.database.rows(
                "select detail ->> 'ready_at' as ready from event where kind = 'hold-hit' and hold = ?",
                row -> row.getString("ready"),
                hit.id()))
        .containsExactly("2026-12-01T20:00:00+00:00");
    kit.service.house.checkOut(Callers.ADMIN, hit.id(), Supposing.NOTHING);
  }

  @Test
  void aReturnInTimeHitsNobody() {
    Hold first = kit.out(DESK, wish("first", period(0, 4), ONE));
    kit.confirmed(OTHER, wish("next", period(5, 8), ONE));
    kit.clockAt(Duration.ofHours(4));
    assertThat(
            kit.service
                .house
                .checkIn(Callers.ADMIN, first.id(), Set.of(), Supposing.NOTHING)
                .hits())
        .as("at the agreed moment, turned round at the moment of the next")
        .isEmpty();
  }

  @Test
  void anEarlyReturnFreesTheRestOfTheTime() {
    Hold first = kit.out(DESK, wish("first", period(0, 20), ONE));
    kit.clockAt(Duration.ofHours(2));
    Hold back =
        kit.service.house.checkIn(Callers.ADMIN, first.id(), Set.of(), Supposing.NOTHING).hold();
    assertThat(back.units()).extracting(HeldUnit::busy).containsExactly(period(0, 3));
    assertThat(kit.hold(OTHER, wish("next", period(3, 20), ONE)).units()).hasSize(1);
  }

  @Test
  void aUnitThatComesBackAtOnceWasBusyAllTheSame() {
    kit.house("mill", Duration.ZERO);
    kit.units("mill", "core/b", 1);
    Hold first = kit.out(DESK, wish("first", period(0, 20), line("mill", "core/b", 1)));
    kit.service.house.checkIn(Callers.ADMIN, first.id(), Set.of(), Supposing.NOTHING);
    assertThat(kit.hold(OTHER, wish("next", period(1, 20), line("mill", "core/b", 1))).units())
        .hasSize(1);
  }
}
