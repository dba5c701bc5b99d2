package org.standoff.kit.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.standoff.kit.hold.OwnKit.at;
import static org.standoff.kit.hold.OwnKit.line;
import static org.standoff.kit.hold.OwnKit.period;
import static org.standoff.kit.hold.OwnKit.second;
import static org.standoff.kit.hold.OwnKit.wish;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standoff.kit.Caller;

class HoldReadingTest {

  private static final Caller DESK = Callers.desk("north-desk");
  private static final Caller OTHER = Callers.desk("south-desk");
  private static final HoldSearch ALL =
      new HoldSearch(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

  private OwnKit kit;
  private Hold both;

  @BeforeEach
  void setUp() {
    kit = new OwnKit();
    kit.house("quay", Duration.ofHours(1));
    kit.house("mill", Duration.ZERO);
    kit.units("quay", "core/a", 1);
    kit.units("mill", "core/b", 1);
    both =
        kit.confirmed(
            DESK, wish("both", period(1, 3), line("quay", "core/a", 1), line("mill", "core/b", 1)));
    kit.hold(DESK, wish("mill", period(5, 7), line("mill", "core/b", 1)));
    kit.hold(OTHER, second("waits", period(2, 6), line("mill", "core/b", 1)));
  }

  @AfterEach
  void tearDown() {
    kit.close();
  }

  private List<String> references(Caller caller, HoldSearch search) {
    return kit.service.holds.list(caller, search, Optional.empty(), 50).stream()
        .map(Hold::reference)
        .toList();
  }

  @Test
  void aDeskSeesItsOwn() {
    assertThat(references(DESK, ALL)).containsExactlyInAnyOrder("both", "mill");
    assertThat(references(OTHER, ALL)).containsExactly("waits");
    assertThatThrownBy(() -> kit.service.holds.find(OTHER, both.id()))
        .isInstanceOf(HoldUnknown.class);
    assertThat(kit.service.holds.find(DESK, both.id())).isEqualTo(both);
  }

  @Test
  void aHouseSeesTheLinesOnItsUnitsOnly() {
    Caller quay = Callers.publisher("quay");
    assertThat(references(quay, ALL)).containsExactly("both");
    assertThat(kit.service.holds.find(quay, both.id()).lines())
        .extracting(HeldLine::wanted)
        .containsExactly(line("quay", "core/a", 1));
    assertThat(references(Callers.publisher("mill"), ALL))
        .containsExactlyInAnyOrder("both", "mill", "waits");
    assertThat(references(Callers.publisher("pier"), ALL)).isEmpty();
  }

  @Test
  void anAdminSeesAll() {
    assertThat(references(Callers.ADMIN, ALL)).hasSize(3);
    assertThat(kit.find(both.id()).lines()).hasSize(2);
  }

  @Test
  void holdsAreFoundByHouseReferenceStateAndPeriod() {
    assertThat(
            references(
                Callers.ADMIN,
                new HoldSearch(
                    Optional.of("quay"),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty())))
        .containsExactly("both");
    assertThat(
            references(
                Callers.ADMIN,
                new HoldSearch(
                    Optional.empty(),
                    Optional.of("mill"),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty())))
        .containsExactly("mill");
    assertThat(
            references(
                Callers.ADMIN,
                new HoldSearch(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(HoldState.WAITING),
                    Optional.empty(),
                    Optional.empty())))
        .containsExactly("waits");
    assertThat(
            references(
                Callers.ADMIN,
                new HoldSearch(
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.of(at(3)),
                    Optional.of(at(5)))))
        .as("over at 3 and begun at 5 only meet the period")
        .containsExactly("waits");
  }

  @Test
  void pagesLoseNothingAndRepeatNothing() {
    List<UUID> seen = new ArrayList<>();
    Optional<UUID> after = Optional.empty();
    do {
      List<Hold> page = kit.service.holds.list(Callers.ADMIN, ALL, after, 1);
      after = page.stream().findFirst().map(Hold::id);
      after.ifPresent(seen::add);
    } while (after.isPresent());
    assertThat(seen).hasSize(3).doesNotHaveDuplicates().isSorted();
  }
}
