package org.standoff.kit.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.standoff.kit.Period;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.Houses;

/** When the houses of a wish hand over, and what of it they refuse. */
@ApplicationScoped
class Handovers {

  private final Houses houses;

  Handovers(Houses houses) {
    this.houses = houses;
  }

  /** When units of houses are busy that are lent for a period. */
  static Map<String, Period> busy(Map<String, Handover> houses, Period lent) {
    return houses.entrySet().stream()
        .collect(Collectors.toMap(Map.Entry::getKey, house -> house.getValue().busy(lent)));
  }

  /** The houses of the lines that there are. */
  Map<String, Handover> of(List<WantedLine> lines) {
    Map<String, Handover> known = new HashMap<>();
    for (WantedLine line : lines) {
      if (!known.containsKey(line.house())) {
        Optional<HouseTerms> terms = houses.find(line.house());
        terms.ifPresent(found -> known.put(line.house(), new Handover(found)));
      }
    }
    return known;
  }

  /**
   * The same for a wish.
   *
   * @throws WishRefused where a house is unknown, or closed when the kit should change hands
   */
  Map<String, Handover> forWish(List<WantedLine> lines, Period lent) {
    return checked(
        lines,
        (house, handover) ->
            Stream.concat(
                handover
                    .refusesCollection(lent.from())
                    .map(next -> closedForCollection(house, lent.from(), next))
                    .stream(),
                closedForReturn(house, handover, lent.to())));
  }

  /**
   * The same for a new end.
   *
   * @throws WishRefused where a house is closed then
   */
  Map<String, Handover> forReturn(List<WantedLine> lines, Instant to) {
    return checked(lines, (house, handover) -> closedForReturn(house, handover, to));
  }

  private Map<String, Handover> checked(
      List<WantedLine> lines, BiFunction<String, Handover, Stream<WishFault>> check) {
    Map<String, Handover> known = of(lines);
    List<WishFault> faults = new ArrayList<>();
    for (int line = 0; line < lines.size(); line++) {
      int place = line;
      String house = lines.get(line).house();
      Handover handover = known.get(house);
      Stream<WishFault> found =
          handover == null
              ? Stream.of(
                  WishFault.of(WishFault.Place.HOUSE, "There is no house of this id.", house))
              : check.apply(house, handover);
      found.map(fault -> fault.inLine(place)).forEach(faults::add);
    }
    if (!faults.isEmpty()) {
      throw new WishRefused(faults);
    }
    return known;
  }

  private static WishFault closedForCollection(String house, Instant at, Instant next) {
    return WishFault.of(
            WishFault.Place.FROM, "'%s' is closed when the hold begins.".formatted(house), at)
        .allowed(next);
  }

  private static Stream<WishFault> closedForReturn(String house, Handover handover, Instant at) {
    return handover
        .refusesReturn(at)
        .map(
            next ->
                WishFault.of(
                        WishFault.Place.TO,
                        "'%s' is closed when the hold ends, and has no drop-box.".formatted(house),
                        at)
                    .allowed(next))
        .stream();
  }
}
