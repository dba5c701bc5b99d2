package org.standoff.kit.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standoff.kit.hold.OwnKit.line;
import static org.standoff.kit.hold.OwnKit.matched;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class UnitChoiceTest {

  /** So many single units, and whole groups of these sizes. */
  private static UnitChoice of(int singles, int... groupSizes) {
    List<FreeUnit> units = new ArrayList<>();
    for (int i = 0; i < singles; i++) {
      units.add(new FreeUnit(units.size(), "single", Optional.empty(), 1));
    }
    for (int group = 0; group < groupSizes.length; group++) {
      for (int i = 0; i < groupSizes[group]; i++) {
        units.add(
            new FreeUnit(units.size(), "grouped", Optional.of("g" + group), groupSizes[group]));
      }
    }
    return new UnitChoice(units);
  }

  private static List<String> taken(UnitChoice choice, int quantity) {
    return choice
        .take(line("quay", "core/a", quantity))
        .map(units -> units.stream().map(FreeUnit::serial).sorted().toList())
        .orElse(List.of());
  }

  @Test
  void singleUnitsLeaveBeforeGroups() {
    assertThat(taken(of(3, 2), 3)).containsExactly("single", "single", "single");
  }

  @Test
  void theFewestGroupedUnitsMakeUpWhatSingleOnesLack() {
    assertThat(taken(of(1, 4, 2), 3)).containsExactly("grouped", "grouped", "single");
    assertThat(taken(of(2, 3), 4))
        .as("one single stays, because the group cannot be broken")
        .containsExactly("grouped", "grouped", "grouped", "single");
  }

  @Test
  void whatOnlyABrokenGroupCouldMakeIsRefused() {
    assertThat(taken(of(0, 2, 2), 3)).isEmpty();
    assertThat(of(0, 2, 2).most(line("quay", "core/a", 3))).isEqualTo(2);
  }

  @Test
  void aGroupOfWhichAMemberIsAwayIsNone() {
    UnitChoice half = new UnitChoice(List.of(new FreeUnit(1, "grouped", Optional.of("g"), 2)));
    assertThat(taken(half, 1)).isEmpty();
    assertThat(half.most(matched("quay", "core/a", 2))).isZero();
  }

  @Test
  void aMatchedLineWantsAGroupOfItsVerySize() {
    assertThat(of(5, 3).take(matched("quay", "core/a", 2))).isEmpty();
    assertThat(of(5, 3, 2).take(matched("quay", "core/a", 2)))
        .hasValueSatisfying(units -> assertThat(units).hasSize(2));
  }

  @Test
  void whatOneLineTookTheNextDoesNotGet() {
    UnitChoice choice = of(2, 2);
    assertThat(taken(choice, 1)).hasSize(1);
    assertThat(taken(choice, 3)).hasSize(3);
    assertThat(taken(choice, 1)).isEmpty();
  }
}
