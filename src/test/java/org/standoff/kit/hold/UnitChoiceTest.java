package org.standoff.kit.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standoff.kit.hold.OwnKit.line;
import static org.standoff.kit.hold.OwnKit.matched;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class UnitChoiceTest {

  private static final long RATE = 1000;

  private final List<FreeUnit> free = new ArrayList<>();

  private UnitChoiceTest single(String serial, long rate) {
    add(free.size(), serial, Optional.empty(), 1, rate);
    return this;
  }

  private UnitChoiceTest group(String name, long... rates) {
    for (long rate : rates) {
      add(free.size(), name, Optional.of(name), rates.length, rate);
    }
    return this;
  }

  private void add(long id, String serial, Optional<String> group, int groupSize, long rate) {
    free.add(new FreeUnit(id, serial, group, groupSize, rate, Optional.empty(), Optional.empty()));
  }

  /** So many single units, and whole groups of these sizes, all at one rate. */
  private UnitChoiceTest have(int singles, int... groupSizes) {
    IntStream.range(0, singles).forEach(any -> single("single", RATE));
    for (int i = 0; i < groupSizes.length; i++) {
      group("g" + i, IntStream.range(0, groupSizes[i]).mapToLong(any -> RATE).toArray());
    }
    return this;
  }

  private List<List<String>> served(WantedLine... lines) {
    return new UnitChoice(free, rate -> 3 * rate)
        .serve(List.of(lines)).stream()
            .map(units -> units.stream().map(FreeUnit::serial).sorted().toList())
            .toList();
  }

  private List<String> taken(int quantity) {
    return served(loose(quantity)).get(0);
  }

  private List<Integer> counts(int... quantities) {
    return served(
            IntStream.of(quantities).mapToObj(UnitChoiceTest::loose).toArray(WantedLine[]::new))
        .stream()
        .map(List::size)
        .toList();
  }

  private static WantedLine loose(int quantity) {
    return line("quay", "core/a", quantity);
  }

  @Test
  void singleUnitsLeaveBeforeGroupsThatCostTheSame() {
    assertThat(have(3, 2).taken(3)).containsExactly("single", "single", "single");
  }

  @Test
  void theCheapestLeaveFirstAndAmongEqualsTheFirstInTheirOrder() {
    single("dear", 5000).single("a", 1000).single("b", 1000);
    free.sort((one, other) -> Long.compare(one.dayRateMinor(), other.dayRateMinor()));
    assertThat(taken(1)).containsExactly("a");
    assertThat(taken(2)).containsExactly("a", "b");
  }

  @Test
  void aGroupThatIsCheaperThanSingleUnitsLeavesBeforeThem() {
    assertThat(single("one", 5000).single("two", 5000).group("pair", 1000, 1000).taken(2))
        .containsExactly("pair", "pair");
    assertThat(taken(3)).containsExactly("one", "pair", "pair");
  }

  @Test
  void aMatchedLineTakesTheCheapestGroupOfItsSize() {
    group("a", 3000, 3000).group("b", 1000, 2000);
    assertThat(served(matched("quay", "core/a", 2))).containsExactly(List.of("b", "b"));
  }

  @Test
  void theFewestGroupedUnitsMakeUpWhatSingleOnesLack() {
    assertThat(have(1, 4, 2).taken(3)).containsExactly("g1", "g1", "single");
  }

  @Test
  void aSingleUnitStaysWhereTheGroupCannotBeBroken() {
    assertThat(have(2, 3).taken(4)).containsExactly("g0", "g0", "g0", "single");
  }

  @Test
  void whatOnlyABrokenGroupCouldMakeIsShort() {
    assertThat(have(0, 2, 2).taken(3)).hasSize(2);
  }

  @Test
  void aGroupOfWhichAMemberIsAwayIsNone() {
    add(1, "grouped", Optional.of("g"), 2, RATE);
    assertThat(served(loose(1), matched("quay", "core/a", 2)))
        .containsExactly(List.of(), List.of());
  }

  @Test
  void aMatchedLineWantsAGroupOfItsVerySizeAndHasItBeforeOthers() {
    have(5, 3, 2);
    WantedLine four = loose(4);
    WantedLine pair = matched("quay", "core/a", 2);
    assertThat(served(four, pair, pair))
        .containsExactly(
            Stream.generate(() -> "single").limit(4).toList(), List.of("g1", "g1"), List.of());
  }

  @Test
  void linesOfOneModelShareAGroup() {
    assertThat(have(0, 4).counts(2, 2)).containsExactly(2, 2);
    assertThat(counts(2, 1)).as("it can't be broken").containsExactly(0, 0);
  }

  @Test
  void noLineTakesWhatWouldLeaveAnotherShort() {
    assertThat(have(0, 3, 3, 2, 2, 2).counts(6, 3, 3)).containsExactly(6, 3, 3);
  }

  @Test
  void whatIsTooLittleForAllGoesToTheFirst() {
    assertThat(have(2, 2).counts(1, 3, 1)).containsExactly(1, 3, 0);
  }
}
