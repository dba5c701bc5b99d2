package org.standoff.kit.free;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.standoff.fixture.OwnDatabase;
import org.standoff.kit.Model;
import org.standoff.kit.Period;
import org.standoff.kit.PlainTransactions;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.OpeningHours;

/**
 * What the database counts against what a look at each unit counts, over random kit: in repair,
 * retired, matched, and in holds of every state, in a house with hours, a drop-box and a
 * turn-round, around the nights in which clocks are set.
 */
class FreeKitLawsTest {
  private static final List<String> MODELS = List.of("m/one", "m/two");
  private static OwnDatabase database;
  private static FreeKit freeKit;

  @BeforeContainer
  static void start() {
    database = OwnDatabase.make();
    freeKit = new FreeKit(new PlainTransactions(database.pool(2)));
  }

  @AfterContainer
  static void stop() {
    database.close();
  }

  @Property(seed = "831", tries = 80)
  void countsAgreeWithALookAtEachUnit(@ForAll Random random) {
    Stock stock = Stock.random(random);
    for (int i = 0; i < 6; i++) {
      Period asked = stock.randomPeriod(random);
      for (String model : MODELS) {
        assertThat(found(stock.house, model, asked))
            .as("%s in %s of %s", model, asked, stock)
            .isEqualTo(stock.expected(model, asked));
      }
    }
  }

  @Property(seed = "832", tries = 25)
  void aLongerPeriodNeverHasMoreFree(@ForAll Random random) {
    Stock stock = Stock.random(random);
    for (int i = 0; i < 4; i++) {
      Period inner = stock.randomPeriod(random);
      Period outer =
          new Period(
              inner.from().minus(Duration.ofHours(random.nextInt(30))),
              inner.to().plus(Duration.ofHours(random.nextInt(30))));
      for (String model : MODELS) {
        Shelf more = found(stock.house, model, inner);
        Shelf fewer = found(stock.house, model, outer);
        assertThat(fewer.freeCount()).isBetween(0, more.freeCount());
        assertThat(fewer.groupCount()).isLessThanOrEqualTo(more.groupCount());
        assertThat(more.freeCount()).isLessThanOrEqualTo(more.unitCount());
      }
    }
  }

  @Property(seed = "833", tries = 15)
  void aHireFitsWhereItsTurnRoundEndsAsTheNextHoldBegins(@ForAll Random random) {
    HouseTerms house = Stock.house(OpeningHours.ALWAYS, Duration.ofMinutes(random.nextInt(600)));
    Stock stock = new Stock(house);
    Unit unit = new Unit("U", MODELS.get(0), Optional.empty(), "available", 1000);
    Instant begin = Stock.BEGIN.plus(Duration.ofMinutes(random.nextInt(5000)));
    Period busy = new Period(begin, begin.plus(Duration.ofHours(5)));
    unit.promises.add(new Promise("confirmed", busy, false));
    stock.add(unit);
    stock.write();
    Duration length = Duration.ofMinutes(1 + random.nextInt(500));
    Instant last = busy.from().minus(house.turnRound());
    Instant grain = last.plus(1, ChronoUnit.MICROS);
    assertThat(free(house, new Period(last.minus(length), last))).isEqualTo(1);
    assertThat(free(house, new Period(last.minus(length), grain))).isZero();
    assertThat(free(house, new Period(busy.to(), busy.to().plus(length)))).isEqualTo(1);
    assertThat(free(house, new Period(busy.to().minus(1, ChronoUnit.MICROS), busy.to()))).isZero();
  }

  @Property(seed = "834", tries = 10)
  void theModelsOfAHouseAreThoseThatItHasNotRetired(@ForAll Random random) {
    Stock stock = Stock.random(random);
    List<String> had =
        MODELS.stream()
            .filter(
                model ->
                    stock.units.stream()
                        .anyMatch(
                            unit -> unit.model.equals(model) && !unit.state.equals("retired")))
            .toList();
    Period week = new Period(Stock.BEGIN, Stock.BEGIN.plus(Duration.ofDays(7)));
    List<String> looked = new ArrayList<>();
    WantedLine wanted = new WantedLine("m/none", 1, false);
    freeKit.find(
        List.of(wanted),
        week,
        List.of(stock.house),
        (line, models) -> {
          looked.addAll(models);
          return List.copyOf(models);
        });
    assertThat(looked).isEqualTo(had);
    // and the whole stock has just these shelves
    assertThat(freeKit.stock(Optional.empty(), week, List.of(stock.house)).shelves())
        .extracting(shelf -> shelf.model().microphone())
        .isEqualTo(had);
  }

  @Property(seed = "835", tries = 5)
  void theRevisionChangesWithEveryChangeOfKitAndNotWithAQuestion(@ForAll Random random) {
    Stock stock = Stock.random(random);
    Period asked = stock.randomPeriod(random);
    String before = revision(stock.house, asked);
    assertThat(revision(stock.house, stock.randomPeriod(random))).isEqualTo(before);
    database.change(
        "update house set title = 'Other', revision = 2 where id = ?", stock.house.id());
    String after = revision(stock.house, asked);
    assertThat(after).isNotEqualTo(before);
  }

  @Property(seed = "836", tries = 25)
  void shelvesAreWhatACountFromNothingGives(@ForAll Random random) {
    Stock stock = Stock.random(random);
    List<String> changes =
        List.of(
            "update unit set state = 'in-repair' where house = ? and serial like '%1'",
            "update unit set state = 'retired' where house = ? and serial like '%2'",
            "update unit set state = 'available', day_rate_minor = 1100 where house = ?",
            "update unit set matched_group = 'x' where house = ? and serial < 'U3'",
            "update unit set matched_group = null where house = ?",
            "update unit set microphone = 'm/two' where house = ? and serial < 'U4'",
            "update unit set note = 'dent' where house = ?",
            "insert into unit (house, serial, microphone, state, day_rate_minor)"
                + " select ?, 'N' || n, 'm/new', 'available', 500 from generate_series(1, 3) n"
                + " on conflict do nothing");
    for (int i = 0; i < 5; i++) {
      database.change(changes.get(random.nextInt(changes.size())), stock.house.id());
      List<String> kept = shelves(stock.house);
      database.rows(
          "select count_shelves(array_agg(house), array_agg(microphone))"
              + " from (select distinct house, microphone from unit where house = ?) as known",
          row -> true,
          stock.house.id());
      assertThat(kept).isEqualTo(shelves(stock.house));
      assertThat(kept)
          .hasSize(
              (int)
                  database.count(
                      "select count(distinct microphone) from unit where house = ?"
                          + " and state <> 'retired'",
                      stock.house.id()));
    }
  }

  private static List<String> shelves(HouseTerms house) {
    return database.rows(
        "select shelf::text as kept from shelf where house = ? order by microphone",
        row -> row.getString("kept"),
        house.id());
  }

  private static String inText(Shelf.Group group) {
    return group.dayRatesMinor().stream().map(String::valueOf).collect(Collectors.joining(","));
  }

  private static String revision(HouseTerms house, Period asked) {
    return freeKit.stock(Optional.of(MODELS), asked, List.of(house)).revision();
  }

  private static int free(HouseTerms house, Period asked) {
    return found(house, MODELS.get(0), asked).freeCount();
  }

  private static Shelf found(HouseTerms house, String model, Period asked) {
    return freeKit.stock(Optional.of(List.of(model)), asked, List.of(house)).shelves().stream()
        .findFirst()
        .orElseGet(() -> Shelf.empty(new Model(house.id(), model)));
  }

  /**
   * A promise of a unit.
   *
   * @param state of its hold; {@code fallen} is tentative and past its expiry
   */
  private record Promise(String state, Period busy, boolean back) {
    boolean occupies() {
      return !List.of("waiting", "released", "expired", "fallen").contains(state);
    }
  }

  private static final class Unit {
    final String serial;
    final String model;
    final Optional<String> group;
    final String state;
    final long rateMinor;
    final List<Promise> promises = new ArrayList<>();

    Unit(String serial, String model, Optional<String> group, String state, long rateMinor) {
      this.rateMinor = rateMinor;
      this.serial = serial;
      this.model = model;
      this.group = group;
      this.state = state;
    }

    /** A desk has it beyond the end of its time. */
    boolean isLate() {
      return promises.stream()
          .anyMatch(
              promise ->
                  promise.state().equals("out") && !promise.busy().to().isAfter(Instant.now()));
    }

    boolean isFree(Period needed) {
      return state.equals("available")
          && !isLate()
          && promises.stream()
              .filter(Promise::occupies)
              .noneMatch(
                  promise ->
                      promise.busy().from().isBefore(needed.to())
                          && needed.from().isBefore(promise.busy().to()));
    }

    @Override
    public String toString() {
      return serial + " " + model + " " + group + " " + state + " " + promises;
    }
  }

  private static final class Stock {
    /** Eleven days before clocks are set back in Vienna. */
    static final Instant BEGIN = Instant.parse("2037-10-14T00:00:00Z");

    final HouseTerms house;
    final List<Unit> units = new ArrayList<>();

    Stock(HouseTerms house) {
      this.house = house;
    }

    static Stock random(Random random) {
      OpeningHours hours =
          random.nextBoolean()
              ? OpeningHours.ALWAYS
              : OpeningHours.parse("mon 09:00-17:00, wed 02:30-12:00, sun 02:30-16:00");
      Stock stock = new Stock(house(hours, Duration.ofMinutes(random.nextInt(3000))));
      int count = random.nextInt(9);
      for (int i = 0; i < count; i++) {
        String state =
            List.of("available", "available", "available", "in-repair", "retired")
                .get(random.nextInt(5));
        String model = MODELS.get(random.nextInt(2));
        Unit unit =
            new Unit(
                "U" + i,
                model,
                // a group is of one model
                random.nextBoolean()
                    ? Optional.empty()
                    : Optional.of(model.charAt(2) + "-" + random.nextInt(2)),
                state,
                900 + 100 * random.nextInt(2));
        int at = random.nextInt(200);
        for (int hold = random.nextInt(4); hold > 0; hold--) {
          int until = at + 1 + random.nextInt(100);
          unit.promises.add(
              new Promise(
                  List.of(
                          "waiting",
                          "tentative",
                          "fallen",
                          "confirmed",
                          "released",
                          "expired",
                          "out")
                      .get(random.nextInt(7)),
                  new Period(hour(at), hour(until)),
                  false));
          at = until + random.nextInt(60);
        }
        if (random.nextInt(8) == 0) {
          Instant past = Instant.parse("2026-01-05T10:00:00Z");
          unit.promises.add(
              new Promise("out", new Period(past, past.plus(Duration.ofDays(2))), false));
        }
        stock.add(unit);
      }
      stock.write();
      return stock;
    }

    static HouseTerms house(OpeningHours hours, Duration turnRound) {
      return new HouseTerms(
          "t-" + UUID.randomUUID(),
          "House",
          ZoneId.of("Europe/Vienna"),
          Currency.getInstance("EUR"),
          hours,
          turnRound,
          true,
          BigDecimal.ONE,
          0,
          1);
    }

    private static Instant hour(int hours) {
      return BEGIN.plus(Duration.ofHours(hours));
    }

    void add(Unit unit) {
      units.add(unit);
    }

    Period randomPeriod(Random random) {
      int from = random.nextInt(400);
      return new Period(hour(from), hour(from + 1 + random.nextInt(120)));
    }

    /** By a look at each unit; the door's next opening and the turn-round counted here. */
    Shelf expected(String model, Period asked) {
      Instant checkIn = asked.to();
      while (!house.hours().nextOpening(checkIn, house.zone()).equals(checkIn)) {
        checkIn = checkIn.plus(Duration.ofMinutes(30));
      }
      Period needed = new Period(asked.from(), checkIn.plus(house.turnRound()));
      List<Unit> all =
          units.stream()
              .filter(unit -> unit.model.equals(model) && !unit.state.equals("retired"))
              .toList();
      Map<List<Long>, Integer> whole = new HashMap<>();
      for (String name : List.of("o-0", "o-1", "t-0", "t-1")) {
        List<Unit> members =
            all.stream().filter(unit -> unit.group.equals(Optional.of(name))).toList();
        if (!members.isEmpty() && members.stream().allMatch(unit -> unit.isFree(needed))) {
          whole.merge(
              members.stream().map(unit -> unit.rateMinor).sorted().toList(), 1, Integer::sum);
        }
      }
      List<Shelf.Group> groups = new ArrayList<>();
      whole.forEach((rates, count) -> groups.add(new Shelf.Group(rates, count)));
      groups.sort(Comparator.comparing(FreeKitLawsTest::inText));
      TreeMap<Long, Integer> single = new TreeMap<>();
      all.stream()
          .filter(unit -> unit.group.isEmpty() && unit.isFree(needed))
          .forEach(unit -> single.merge(unit.rateMinor, 1, Integer::sum));
      List<Shelf.Loose> loose = new ArrayList<>();
      single.forEach((rate, count) -> loose.add(new Shelf.Loose(rate, count)));
      return new Shelf(
          new Model(house.id(), model),
          all.size(),
          (int) all.stream().filter(unit -> unit.state.equals("in-repair")).count(),
          (int) all.stream().filter(Unit::isLate).count(),
          loose,
          groups);
    }

    void write() {
      database.change(
          "insert into house (id, title, zone, hours, drop_box) values (?, 'House', ?, ?, true)",
          house.id(),
          house.zone().getId(),
          house.hours().toString());
      for (Unit unit : units) {
        database.change(
            "insert into unit (house, serial, microphone, matched_group, state, day_rate_minor)"
                + " values (?, ?, ?, ?, ?, ?)",
            house.id(),
            unit.serial,
            unit.model,
            unit.group,
            unit.state,
            unit.rateMinor);
        for (Promise promise : unit.promises) {
          write(unit, promise);
        }
      }
    }

    private void write(Unit unit, Promise promise) {
      UUID hold = UUID.randomUUID();
      Optional<Instant> expiry =
          switch (promise.state()) {
            case "fallen" -> Optional.of(Instant.parse("2026-01-01T00:00:00Z"));
            case "waiting", "tentative" -> Optional.of(Instant.parse("2199-01-01T00:00:00Z"));
            default -> Optional.empty();
          };
      database.change(
          "insert into hold (id, desk, reference, held_from, held_to, state, lifetime_min,"
              + " expires_at) values (?, 'desk', ?, ?, ?, ?, 60, ?)",
          hold,
          hold.toString(),
          promise.busy().from(),
          promise.busy().to(),
          promise.state().equals("fallen") ? "tentative" : promise.state(),
          expiry);
      database.change(
          "insert into hold_line (hold, line, house, microphone, quantity, matched)"
              + " values (?, 0, ?, ?, 1, false)",
          hold,
          house.id(),
          unit.model);
      database.change(
          "insert into hold_unit (hold, line, unit, house, microphone, day_rate_minor, busy, occupies, out_at)"
              + " select ?, 0, id, house, microphone, day_rate_minor, tstzrange(?, ?), ?, ?"
              + " from unit where house = ? and serial = ?",
          hold,
          promise.busy().from(),
          promise.busy().to(),
          promise.occupies() || promise.state().equals("fallen"),
          Optional.of(promise.busy().from()).filter(from -> promise.state().equals("out")),
          house.id(),
          unit.serial);
    }

    @Override
    public String toString() {
      return house + " " + units;
    }
  }
}
