package org.standoff.rest.kit;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.standoff.answers.UnanswerableQuestion;
import org.standoff.answers.kit.AskedLine;
import org.standoff.answers.kit.Availability;
import org.standoff.answers.kit.AvailabilityAnswer;
import org.standoff.answers.kit.AvailabilityQuestion;
import org.standoff.answers.kit.LinesAtHouses;
import org.standoff.answers.kit.ShortageSubstitutes;
import org.standoff.answers.kit.Substitute;
import org.standoff.kit.hold.Shortage;
import org.standoff.kit.hold.Shortfall;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.Houses;
import org.standoff.rest.json.QuestionFaults;

/** Tells of lines that are short who else has them, when they are free, and what could stand in. */
@ApplicationScoped
class Shortfalls {

  private static final int MOST_HOUSES = 20;

  private final Availability availability;
  private final ShortageSubstitutes substitutes;
  private final Houses houses;

  Shortfalls(Availability availability, ShortageSubstitutes substitutes, Houses houses) {
    this.availability = availability;
    this.substitutes = substitutes;
    this.houses = houses;
  }

  /** What is short of a wish, in the order of its lines. */
  List<ShortfallView> of(HoldTold wish, Shortage shortage) {
    LinesAtHouses answer = ask(wish);
    Map<Integer, List<Substitute>> instead = substitutes.of(shortage);
    Set<String> open =
        answer.houses().stream()
            .filter(AvailabilityAnswer.HouseAsked::possible)
            .map(AvailabilityAnswer.HouseAsked::house)
            .collect(Collectors.toSet());
    return shortage.shortfalls().stream()
        .map(
            shortfall ->
                view(
                    shortfall,
                    answer.lines().get(shortfall.line()).houses(),
                    open,
                    instead.getOrDefault(shortfall.line(), List.of())))
        .toList();
  }

  /** A microphone that nobody knows is told as what it is: a slip of the pen. */
  private LinesAtHouses ask(HoldTold wish) {
    List<AskedLine> lines =
        wish.lines().stream()
            .map(line -> new AskedLine(line.microphone(), line.quantity(), line.matched()))
            .toList();
    try {
      return availability.lineByLine(
          new AvailabilityQuestion(
              null, null, null, lines, wish.from(), wish.to(), asked(wish), 0));
    } catch (UnanswerableQuestion unanswerable) {
      throw QuestionFaults.inBody(unanswerable);
    }
  }

  /** Those of the wish, and as many others as may be asked at once. */
  private List<String> asked(HoldTold wish) {
    Set<String> asked = new LinkedHashSet<>();
    wish.lines().forEach(line -> asked.add(line.house()));
    houses.list().stream()
        .map(HouseTerms::id)
        .takeWhile(any -> asked.size() < MOST_HOUSES)
        .forEach(asked::add);
    return asked.stream().limit(MOST_HOUSES).toList();
  }

  private static ShortfallView view(
      Shortfall shortfall,
      List<AvailabilityAnswer.LineAtHouse> found,
      Set<String> open,
      List<Substitute> instead) {
    Optional<AvailabilityAnswer.LineAtHouse> there =
        found.stream().filter(one -> one.house().equals(shortfall.wanted().house())).findFirst();
    return new ShortfallView(
        "/lines/" + shortfall.line(),
        shortfall.wanted().house(),
        shortfall.wanted().microphone(),
        shortfall.wanted().quantity(),
        shortfall.wanted().matched(),
        shortfall.freeCount(),
        there.map(AvailabilityAnswer.LineAtHouse::shortPeriods).orElse(List.of()),
        there
            .flatMap(AvailabilityAnswer.LineAtHouse::nextFree)
            .map(AvailabilityAnswer.Stretch::from)
            .orElse(null),
        found.stream()
            .filter(one -> !one.house().equals(shortfall.wanted().house()) && one.freeCount() > 0)
            .map(
                one ->
                    new ShortfallView.Elsewhere(
                        one.house(), one.enough() && open.contains(one.house()), one.freeCount()))
            .toList(),
        instead);
  }
}
