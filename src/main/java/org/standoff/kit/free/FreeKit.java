package org.standoff.kit.free;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.standoff.kit.Model;
import org.standoff.kit.Period;
import org.standoff.kit.Transactions;
import org.standoff.kit.hold.Handover;
import org.standoff.kit.house.HouseTerms;

/** Finds what is free. Every answer rests on one snapshot of the database. */
@ApplicationScoped
public class FreeKit {

  /** How far ahead the next free period is looked for. */
  public static final Duration HORIZON = Duration.ofDays(92);

  /** Models looked at in a house that is short of a line. */
  private static final int MOST_ALTERNATIVES = 20;

  private final Transactions transactions;

  FreeKit(Transactions transactions) {
    this.transactions = transactions;
  }

  /**
   * Every line at every house.
   *
   * @param alternatives what else to look at where a line is short
   * @throws org.standoff.kit.DatabaseLost where the database is not there
   */
  public FreeReport find(
      List<WantedLine> lines, Period period, List<HouseTerms> houses, Alternatives alternatives) {
    return transactions.statements(
        connection ->
            new Finding(KitSnapshot.take(connection), lines, period, houses).report(alternatives));
  }

  /**
   * What houses have free of other models than those that they are short of.
   *
   * @param shortLines by house
   * @return in the order of houses and models
   * @throws org.standoff.kit.DatabaseLost where the database is not there
   */
  public List<Shelf> beside(
      Map<HouseTerms, List<WantedLine>> shortLines, Period period, Alternatives alternatives) {
    return transactions.statements(
        connection -> beside(KitSnapshot.take(connection), shortLines, period, alternatives));
  }

  /**
   * What houses have and how much of it is free.
   *
   * @param microphones the models; all where absent
   * @throws org.standoff.kit.DatabaseLost where the database is not there
   */
  public FreeStock stock(
      Optional<Collection<String>> microphones, Period period, List<HouseTerms> houses) {
    return transactions.statements(
        connection -> {
          KitSnapshot snapshot = KitSnapshot.take(connection);
          return new FreeStock(snapshot.revision(), snapshot.shelves(houses, microphones, period));
        });
  }

  private static List<Shelf> beside(
      KitSnapshot snapshot,
      Map<HouseTerms, List<WantedLine>> shortLines,
      Period period,
      Alternatives alternatives)
      throws SQLException {
    if (shortLines.isEmpty() || alternatives == Alternatives.NONE) {
      return List.of();
    }
    Map<String, List<String>> models = snapshot.models(shortLines.keySet());
    Set<String> worthALook = new LinkedHashSet<>();
    shortLines.forEach(
        (house, lines) ->
            lines.forEach(
                line ->
                    alternatives.of(line, models.getOrDefault(house.id(), List.of())).stream()
                        .limit(MOST_ALTERNATIVES)
                        .forEach(worthALook::add)));
    return snapshot.shelves(shortLines.keySet(), Optional.of(worthALook), period);
  }

  /** One question, answered from one snapshot. */
  private static final class Finding {
    private final KitSnapshot snapshot;
    private final List<WantedLine> lines;
    private final Period period;
    private final List<HouseTerms> houses;

    Finding(KitSnapshot snapshot, List<WantedLine> lines, Period period, List<HouseTerms> houses) {
      this.snapshot = snapshot;
      this.lines = lines;
      this.period = period;
      this.houses = houses;
    }

    FreeReport report(Alternatives alternatives) throws SQLException {
      Set<String> models =
          lines.stream()
              .map(WantedLine::microphone)
              .collect(Collectors.toCollection(LinkedHashSet::new));
      Map<Model, Shelf> shelves = new HashMap<>();
      snapshot
          .shelves(houses, Optional.of(models), period)
          .forEach(shelf -> shelves.put(shelf.model(), shelf));
      List<FreeReport.LineAtHouse> found = new ArrayList<>();
      Map<HouseTerms, List<Integer>> shortAt = new LinkedHashMap<>();
      for (int i = 0; i < lines.size(); i++) {
        for (HouseTerms house : houses) {
          WantedLine line = lines.get(i);
          Model model = new Model(house.id(), line.microphone());
          Shelf shelf = shelves.getOrDefault(model, Shelf.empty(model));
          FreeReport.LineAtHouse one =
              new FreeReport.LineAtHouse(i, line, house, shelf, List.of(), Optional.empty());
          if (!one.enough()) {
            shortAt.computeIfAbsent(house, any -> new ArrayList<>()).add(found.size());
          }
          found.add(one);
        }
      }
      Map<HouseTerms, List<WantedLine>> shortLines = new LinkedHashMap<>();
      for (Map.Entry<HouseTerms, List<Integer>> places : shortAt.entrySet()) {
        explain(found, places.getKey(), places.getValue());
        shortLines.put(
            places.getKey(),
            places.getValue().stream().map(place -> found.get(place).wanted()).toList());
      }
      List<Shelf> others = beside(snapshot, shortLines, period, alternatives);
      return new FreeReport(snapshot.revision(), snapshot.now(), found, others);
    }

    /**
     * Puts in the place of each short line of a house one that says when it is short and when not.
     */
    private void explain(List<FreeReport.LineAtHouse> found, HouseTerms house, List<Integer> places)
        throws SQLException {
      List<Integer> known =
          places.stream().filter(place -> found.get(place).shelf().unitCount() > 0).toList();
      if (known.isEmpty()) {
        return;
      }
      Set<String> models =
          known.stream()
              .map(place -> found.get(place).wanted().microphone())
              .collect(Collectors.toSet());
      Instant horizon = period.from().plus(HORIZON);
      Period last = new Handover(house).busy(new Period(horizon, horizon.plus(period.length())));
      Map<String, List<ShelfDiary.UnitDiary>> diaries =
          snapshot.diaries(house, models, new Period(period.from(), last.to()));
      known.forEach(place -> found.set(place, explained(found.get(place), diaries, horizon)));
    }

    private FreeReport.LineAtHouse explained(
        FreeReport.LineAtHouse one,
        Map<String, List<ShelfDiary.UnitDiary>> diaries,
        Instant horizon) {
      ShelfDiary diary =
          new ShelfDiary(one.house(), diaries.getOrDefault(one.wanted().microphone(), List.of()));
      return new FreeReport.LineAtHouse(
          one.line(),
          one.wanted(),
          one.house(),
          one.shelf(),
          diary.shortPeriods(one.wanted(), period),
          diary.nextFree(one.wanted(), period, horizon));
    }
  }
}
