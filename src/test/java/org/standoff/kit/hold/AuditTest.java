package org.standoff.kit.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standoff.kit.hold.OwnKit.at;
import static org.standoff.kit.hold.OwnKit.line;
import static org.standoff.kit.hold.OwnKit.period;
import static org.standoff.kit.hold.OwnKit.second;
import static org.standoff.kit.hold.OwnKit.wish;

import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Supposing;
import org.standoff.kit.Caller;

class AuditTest {

  private static final Caller DESK = Callers.desk("north-desk");

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

  private List<String> audited(String table) {
    return kit.database.rows(
        """
        select concat_ws(' ', actor, before ->> 'state', '->', after ->> 'state') as told
        from audit where table_name = ? order by id
        """,
        row -> row.getString("told"),
        table);
  }

  @Test
  void everyStepOfAHoldIsWrittenDownWithWhoTookIt() {
    Hold hold = kit.hold(DESK, wish("r", period(0, 2), line("quay", "core/a", 1)));
    kit.service.desk.confirm(DESK, hold.id(), Supposing.NOTHING);
    kit.service.desk.extend(DESK, hold.id(), at(3), Supposing.NOTHING);
    Caller clerk = Callers.publisher("quay");
    kit.service.house.checkOut(clerk, hold.id(), Supposing.NOTHING);
    kit.service.house.checkIn(clerk, hold.id(), Set.of(), Supposing.NOTHING);
    assertThat(audited("hold"))
        .containsExactly(
            "north-desk -> tentative",
            "north-desk tentative -> confirmed",
            "north-desk confirmed -> confirmed",
            "clerk-of-quay confirmed -> out",
            "clerk-of-quay out -> returned");
    assertThat(
            kit.database.rows(
                "select after ->> 'held_to' from audit where table_name = 'hold' order by id",
                row -> row.getString(1)))
        .containsExactly(
            "2026-12-01T14:00:00+00:00",
            "2026-12-01T14:00:00+00:00",
            "2026-12-01T15:00:00+00:00",
            "2026-12-01T15:00:00+00:00",
            "2026-12-01T15:00:00+00:00");
    assertThat(
            kit.database.rows(
                "select actor from audit where table_name = 'hold_unit' order by id",
                row -> row.getString(1)))
        .as("promised, longer, out, back")
        .containsExactly("north-desk", "north-desk", "clerk-of-quay", "clerk-of-quay");
  }

  @Test
  void whoeverMovedUpWasMovedByWhoeverFreedTheUnits() {
    Hold first = kit.hold(DESK, wish("r", period(0, 2), line("quay", "core/a", 1)));
    Hold waiting =
        kit.hold(Callers.desk("south-desk"), second("s", period(1, 2), line("quay", "core/a", 1)));
    kit.service.desk.release(DESK, first.id(), Supposing.NOTHING);
    assertThat(kit.state(waiting)).isEqualTo(HoldState.TENTATIVE);
    assertThat(audited("hold"))
        .containsExactly(
            "north-desk -> tentative",
            "south-desk -> waiting",
            "north-desk tentative -> released",
            "north-desk waiting -> tentative");
  }

  @Test
  void aChangeBehindTheServiceIsWrittenDownToo() {
    kit.database.change("update unit set state = 'in-repair'");
    kit.database.change("update unit set state = 'in-repair'");
    assertThat(audited("unit"))
        .as("what changes nothing is no change")
        .containsExactly("postgres -> available", "postgres available -> in-repair");
    assertThat(audited("house")).containsExactly("postgres ->");
  }
}
