package org.standoff.kit.free;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.SQLException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
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

  private final Transactions transactions;

  FreeKit(Transactions transactions) {
    this.transactions = transactions;
  }

  /**
   * Every line at every house.
   *
   * @param withShelves whether to tell what else the houses have where a line is short
   * @throws org.standoff.kit.DatabaseLost where the database is not there
   */
  public FreeReport find(
      List<WantedLine> lines, Period period, List<HouseTerms> houses, boolean withShelves) {
    return transactions.statements(
        connection ->
            new Finding(KitSnapshot.take(connection), lines, period, houses).report(withShelves));
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

    FreeReport report(boolean withShelves) throws SQLException {
      Set<String> models =
          lines.stream()
              .map(WantedLine::microphone)
              .collect(Collectors.toCollection(LinkedHashSet::new));
      Map<Model, Shelf> shelves = new HashMap<>();
      snapshot
          .shelves(houses, Optional.of(models), period)
          .forEach(shelf -> shelves.put(shelf.model(), shelf));
      List<FreeReport.LineAtHouse> found = new ArrayList<>();
      for (int i = 0; i < lines.size(); i++) {
        for (HouseTerms house : houses) {
          WantedLine line = lines.get(i);
          Model model = new Model(house.id(), line.microphone());
          found.add(
              new FreeReport.LineAtHouse(
                  i,
                  line,
                  house,
                  shelves.getOrDefault(model, Shelf.empty(model)),
                  List.of(),
                  Optional.empty()));
        }
      }
      explainShort(found);
      List<HouseTerms> withShort =
          houses.stream()
              .filter(
                  house ->
                      found.stream().anyMatch(one -> one.house().equals(house) && !one.enough()))
              .toList();
      List<Shelf> others =
          withShelves && !withShort.isEmpty()
              ? snapshot.shelves(withShort, Optional.empty(), period)
              : List.of();
      return new FreeReport(snapshot.revision(), snapshot.now(), found, others);
    }

    /** Puts in the place of each short line one that says when it is short and when it is not. */
    private void explainShort(List<FreeReport.LineAtHouse> found) throws SQLException {
      Instant horizon = period.from().plus(HORIZON);
      for (HouseTerms house : houses) {
        Set<String> models =
            found.stream()
                .filter(one -> isShort(one, house))
                .map(one -> one.wanted().microphone())
                .collect(Collectors.toSet());
        if (!models.isEmpty()) {
          Period last =
              new Handover(house).busy(new Period(horizon, horizon.plus(period.length())));
          Map<String, List<ShelfDiary.UnitDiary>> diaries =
              snapshot.diaries(house, models, new Period(period.from(), last.to()));
          found.replaceAll(one -> isShort(one, house) ? explained(one, diaries, horizon) : one);
        }
      }
    }

    private static boolean isShort(FreeReport.LineAtHouse one, HouseTerms house) {
      return one.house().equals(house) && !one.enough() && one.shelf().unitCount() > 0;
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
