package org.standoff.answers.kit;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.standoff.answers.AnswerContext;
import org.standoff.kit.free.FreeKit;
import org.standoff.kit.free.Shelf;
import org.standoff.kit.free.WantedLine;
import org.standoff.kit.hold.Shortage;
import org.standoff.kit.hold.Shortfall;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.Houses;

/** Names what could stand in where a hold is refused for want of units. */
@ApplicationScoped
public class ShortageSubstitutes {
  private final AnswerContext context;
  private final Houses houses;
  private final FreeKit freeKit;

  ShortageSubstitutes(AnswerContext context, Houses houses, FreeKit freeKit) {
    this.context = context;
    this.houses = houses;
    this.freeKit = freeKit;
  }

  /**
   * What the house of each short line has free for the whole period, least lost first.
   *
   * @return by the line's place in the wish, from 0; every short line has an entry
   * @throws org.standoff.kit.DatabaseLost where the database is not there
   */
  public Map<Integer, List<Substitute>> of(Shortage shortage) {
    Map<String, HouseTerms> terms =
        houses
            .named(
                shortage.shortfalls().stream()
                    .map(shortfall -> shortfall.wanted().house())
                    .distinct()
                    .toList())
            .stream()
            .collect(Collectors.toMap(HouseTerms::id, Function.identity()));
    Map<HouseTerms, List<WantedLine>> shortLines = new LinkedHashMap<>();
    for (Shortfall shortfall : shortage.shortfalls()) {
      HouseTerms house = terms.get(shortfall.wanted().house());
      if (house != null) {
        shortLines.computeIfAbsent(house, any -> new ArrayList<>()).add(line(shortfall.wanted()));
      }
    }
    Substitutes substitutes = new Substitutes(context.references().catalogue());
    List<Shelf> shelves = freeKit.beside(shortLines, shortage.period(), substitutes);
    Map<Integer, List<Substitute>> found = new LinkedHashMap<>();
    for (Shortfall shortfall : shortage.shortfalls()) {
      found.put(
          shortfall.line(),
          substitutes.of(
              shelves,
              line(shortfall.wanted()),
              others(shortage, shortfall),
              shortfall.wanted().house(),
              AvailabilityQuestion.USUAL_SUBSTITUTES));
    }
    return found;
  }

  private static List<WantedLine> others(Shortage shortage, Shortfall shortfall) {
    List<WantedLine> others = new ArrayList<>();
    for (int i = 0; i < shortage.lines().size(); i++) {
      var wanted = shortage.lines().get(i);
      if (i != shortfall.line() && wanted.house().equals(shortfall.wanted().house())) {
        others.add(line(wanted));
      }
    }
    return others;
  }

  private static WantedLine line(org.standoff.kit.hold.WantedLine wanted) {
    return new WantedLine(wanted.microphone(), wanted.quantity(), wanted.matched());
  }
}
