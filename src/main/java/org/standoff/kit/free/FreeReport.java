package org.standoff.kit.free;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.standoff.kit.Period;
import org.standoff.kit.house.HouseTerms;

/**
 * What was free at one moment.
 *
 * @param revision names the state of the kit
 * @param asOf the moment, by the clock of the database
 * @param lines every line at every house, line by line in the order of the question
 * @param shelves of models that may stand in, at the houses with a short line, in the order of
 *     houses and models; empty where nothing is short or nobody asked
 */
public record FreeReport(
    String revision, Instant asOf, List<LineAtHouse> lines, List<Shelf> shelves) {

  /**
   * One line at one house, as if it were the only one.
   *
   * @param line its place in the question, from 0
   * @param wanted the line
   * @param house the house
   * @param shelf what it has of the model
   * @param shortPeriods when too few are there at once, within the period and its turn-round; none
   *     where the line is met, and none where it is short because no unit stays throughout
   * @param nextFree where it is short, the next period of the same length in which it is not
   */
  public record LineAtHouse(
      int line,
      WantedLine wanted,
      HouseTerms house,
      Shelf shelf,
      List<Period> shortPeriods,
      Optional<Period> nextFree) {

    public LineAtHouse {
      shortPeriods = List.copyOf(shortPeriods);
    }

    /** Whether the house can meet the line. */
    public boolean enough() {
      return shelf.lots().meet(wanted);
    }
  }

  public FreeReport {
    lines = List.copyOf(lines);
    shelves = List.copyOf(shelves);
  }
}
