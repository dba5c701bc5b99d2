package org.standoff.kit.hold;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
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

  /**
   * Looks for units, while the locks of the models are held. Lines of one model share what is
   * there, as they do where availability is told.
   *
   * @param houses of the lines
   */
  static Promise seek(
      Connection connection, List<WantedLine> lines, Map<String, Handover> houses, Period lent)
      throws SQLException {
    Map<String, Period> busy = Handovers.busy(houses, lent);
    Map<Model, List<FreeUnit>> free = FreeUnits.of(connection, lines, busy);
    Map<Model, List<Integer>> places = new LinkedHashMap<>();
    for (int line = 0; line < lines.size(); line++) {
      places.computeIfAbsent(lines.get(line).model(), model -> new ArrayList<>()).add(line);
    }
    List<List<PromisedUnit>> units = new ArrayList<>(Collections.nCopies(lines.size(), List.of()));
    List<Shortfall> shortfalls = new ArrayList<>();
    places.forEach(
        (model, ofModel) -> {
          Handover house = Objects.requireNonNull(houses.get(model.house()));
          Period time = Objects.requireNonNull(busy.get(model.house()));
          UnitChoice choice =
              new UnitChoice(
                  free.getOrDefault(model, List.of()), rate -> house.chargeMinor(rate, lent));
          List<List<FreeUnit>> served = choice.serve(ofModel.stream().map(lines::get).toList());
          for (int i = 0; i < served.size(); i++) {
            int line = ofModel.get(i);
            WantedLine wanted = lines.get(line);
            if (served.get(i).size() == wanted.quantity()) {
              units.set(
                  line, served.get(i).stream().map(unit -> promised(unit, lent, time)).toList());
            } else {
              shortfalls.add(new Shortfall(line, wanted, served.get(i).size()));
            }
          }
        });
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

  private static PromisedUnit promised(FreeUnit unit, Period lent, Period busy) {
    return new PromisedUnit(
        unit.id(),
        new HeldUnit(
            unit.serial(),
            unit.group(),
            unit.dayRateMinor(),
            unit.matchWithinDb(),
            unit.replacementMinor(),
            true,
            lent.to(),
            busy,
            Optional.empty(),
            Optional.empty()));
  }
}
