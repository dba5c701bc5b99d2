package org.standoff.kit.hold;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.standoff.kit.Model;
import org.standoff.kit.Period;

/**
 * Units for every line of a wish, or the lines that can't be met.
 *
 * @param units by line, each with the time in which it is busy; empty where a line is short
 * @param shortfalls the short lines
 */
record Promise(List<List<PromisedUnit>> units, List<Shortfall> shortfalls) {

  /**
   * A unit that a line takes.
   *
   * @param id number of its row
   * @param held as the hold has it
   */
  record PromisedUnit(long id, HeldUnit held) {}

  /** Looks for units, while the locks of the models are held. */
  static Promise seek(Connection connection, List<WantedLine> lines, Map<String, Period> busy)
      throws SQLException {
    Map<Model, UnitChoice> free = FreeUnits.of(connection, lines, busy);
    List<List<PromisedUnit>> units = new ArrayList<>();
    lines.forEach(line -> units.add(List.of()));
    List<Shortfall> shortfalls = new ArrayList<>();
    // matched lines first, or another line might take their group
    for (boolean matched : List.of(true, false)) {
      for (int line = 0; line < lines.size(); line++) {
        WantedLine wanted = lines.get(line);
        if (wanted.matched() == matched) {
          UnitChoice choice = free.getOrDefault(wanted.model(), new UnitChoice(List.of()));
          Period time = Objects.requireNonNull(busy.get(wanted.house()));
          Optional<List<FreeUnit>> taken = choice.take(wanted);
          if (taken.isPresent()) {
            units.set(line, taken.get().stream().map(unit -> promised(unit, time)).toList());
          } else {
            shortfalls.add(new Shortfall(line, wanted, choice.most(wanted)));
          }
        }
      }
    }
    shortfalls.sort(Comparator.comparingInt(Shortfall::line));
    return new Promise(units, shortfalls);
  }

  /** No units yet, for a hold that waits. */
  static Promise none(int lines) {
    return new Promise(Collections.nCopies(lines, List.of()), List.of());
  }

  boolean isWhole() {
    return shortfalls.isEmpty();
  }

  /** The lines of a hold that has these units. */
  List<HeldLine> lines(List<WantedLine> wanted) {
    List<HeldLine> lines = new ArrayList<>();
    for (int line = 0; line < wanted.size(); line++) {
      lines.add(
          new HeldLine(
              line, wanted.get(line), units.get(line).stream().map(PromisedUnit::held).toList()));
    }
    return lines;
  }

  private static PromisedUnit promised(FreeUnit unit, Period busy) {
    return new PromisedUnit(
        unit.id(),
        new HeldUnit(unit.serial(), unit.group(), busy, Optional.empty(), Optional.empty()));
  }
}
