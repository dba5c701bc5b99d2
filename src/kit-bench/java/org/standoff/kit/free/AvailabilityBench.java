package org.standoff.kit.free;

import java.math.BigDecimal;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.standoff.kit.Period;
import org.standoff.kit.PlainTransactions;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.OpeningHours;

/**
 * What availability costs at the database, JDBC included, with more and more holds that are over:
 * 20 houses, 500 models in each, as many units of each as asked for, two of every ten a matched
 * pair; every fifth unit has a hold to come, both of a pair or none. Prints a table and asserts
 * nothing.
 */
public final class AvailabilityBench {
  private static final int HOUSES = 20;
  private static final int MODELS = 500;
  private static final int ASKED_MODELS = 50;

  /** Without a factor in common with any number of units, which are round. */
  private static final int FAR = 7919;

  private static final int WARM_UP = 15;
  private static final int MEASURED = 40;
  private static final int SLOW_MEASURED = 7;

  private final DataSource dataSource;
  private final int unitsOfAModel;
  private final FreeKit freeKit;
  private final List<HouseTerms> houses;
  private final Period period;

  /**
   * @param dataSource a pool on an empty database with the service's tables, as its superuser
   * @param units how many there are to be in all
   */
  public AvailabilityBench(DataSource dataSource, int units) {
    this.dataSource = dataSource;
    this.unitsOfAModel = Math.max(10, units / HOUSES / MODELS);
    this.freeKit = new FreeKit(new PlainTransactions(dataSource));
    this.houses = IntStream.range(0, HOUSES).mapToObj(AvailabilityBench::house).toList();
    Instant from = Instant.now().truncatedTo(ChronoUnit.HOURS).plus(Duration.ofDays(10));
    this.period = new Period(from, from.plus(Duration.ofDays(3)));
  }

  /**
   * Fills the database and asks.
   *
   * @param holds how many there are to be in the end, those to come included
   */
  public void run(int holds) throws SQLException {
    int units = HOUSES * MODELS * unitsOfAModel;
    int toCome = units / 5;
    fillUnits();
    fillHolds(0, toCome, "now() + make_interval(days => n / 2 % 40, hours => n / 2 % 24)");
    System.out.printf(
        Locale.ROOT,
        "%,d units, %,d holds to come; median and 95th percentile in ms%n%12s %22s %22s %22s %22s%n",
        units,
        toCome,
        "holds over",
        "50 models, 20 houses",
        "one model, one house",
        "50 short, explained",
        "whole stock");
    int step = Math.max(1, (holds - toCome) / 2);
    ask(0);
    for (int over = step; over <= 2 * step; over += step) {
      fillHolds(
          over - step,
          over,
          "now() - make_interval(days => 5 + 5 * (n / %d), hours => n / 2 %% 24)".formatted(units));
      ask(over);
    }
  }

  private void ask(int over) throws SQLException {
    List<WantedLine> many =
        IntStream.range(0, ASKED_MODELS)
            .mapToObj(model -> new WantedLine(model(model * MODELS / ASKED_MODELS), 4, false))
            .toList();
    List<WantedLine> one = many.subList(7, 8);
    List<WantedLine> tooMany =
        many.stream().map(line -> new WantedLine(line.microphone(), 3, true)).toList();
    Alternatives twenty = (wanted, models) -> models.stream().limit(20).toList();
    System.out.printf(
        Locale.ROOT,
        "%,12d %22s %22s %22s %22s%n",
        over,
        time(MEASURED, () -> freeKit.find(many, period, houses, Alternatives.NONE)),
        time(MEASURED, () -> freeKit.find(one, period, houses.subList(3, 4), Alternatives.NONE)),
        time(SLOW_MEASURED, () -> freeKit.find(tooMany, period, houses, twenty)),
        time(SLOW_MEASURED, () -> freeKit.stock(Optional.empty(), period, houses)));
  }

  private static String time(int times, Supplier<Object> work) {
    for (int i = 0; i < Math.min(times, WARM_UP); i++) {
      work.get();
    }
    long[] nanos = new long[times];
    for (int i = 0; i < times; i++) {
      long begun = System.nanoTime();
      work.get();
      nanos[i] = System.nanoTime() - begun;
    }
    Arrays.sort(nanos);
    return String.format(
        Locale.ROOT, "%.1f, %.1f", nanos[times / 2] / 1e6, nanos[times * 95 / 100] / 1e6);
  }

  private void fillUnits() throws SQLException {
    execute(
        "insert into house (id, title, zone) select 'bench-' || h, 'Bench ' || h, 'UTC'"
            + " from generate_series(0, %d) h".formatted(HOUSES - 1)
            + " union all select 'bench-sheet', 'A sheet', 'UTC'",
        """
        insert into unit (house, serial, microphone, matched_group, state, day_rate_minor)
        select 'bench-' || h, 'S' || m || '-' || n, 'bench/m-' || m,
            case when n %% 10 in (1, 2) then 'p' || m || '-' || n / 10 end,
            case when n %% 50 = 49 then 'in-repair' else 'available' end, 500 + 100 * (n %% 3)
        from generate_series(0, %d) h, generate_series(0, %d) m, generate_series(1, %d) n
        """
            .formatted(HOUSES - 1, MODELS - 1, unitsOfAModel),
        "select count_shelves(array_agg(house), array_agg(microphone))"
            + " from (select distinct house, microphone from unit) as known",
        "vacuum analyze shelf");
  }

  /**
   * Holds of two days and one unit, numbered from one figure to before another. Two in a row hold
   * neighbours, because a matched pair leaves as a whole; the next two are far away, so that pairs
   * and single units are held as often as they are there.
   *
   * @param begins when hold number n begins
   */
  private void fillHolds(int from, int before, String begins) throws SQLException {
    execute(
        """
        create temporary table wanted as
        with numbered as (select id, house, microphone, row_number() over (order by id) - 1 as at
            from unit where house like 'bench-%%')
        select gen_random_uuid() as hold, n, u.id as unit, u.house, u.microphone, %s as begins
        from generate_series(%d, %d) n
            join numbered u
                on u.at = (n / 2::bigint * %d * 2 + n %% 2) %% (select count(*) from numbered)
        """
            .formatted(begins, from, before - 1, FAR),
        """
        insert into hold (id, desk, reference, held_from, held_to, state, lifetime_min)
        select hold, 'bench', hold::text, begins, begins + interval '2 days',
            case when begins < now() then 'returned' else 'confirmed' end, 60
        from wanted
        """,
        """
        insert into hold_line (hold, line, house, microphone, quantity, matched)
        select hold, 0, house, microphone, 1, false from wanted
        """,
        """
        insert into hold_unit (hold, line, unit, house, microphone, day_rate_minor, busy, out_at, in_at)
        select hold, 0, unit, house, microphone, 0, tstzrange(begins, begins + interval '50 hours'),
            case when begins < now() then begins end,
            case when begins < now() then begins + interval '2 days' end
        from wanted
        """,
        "drop table wanted",
        "vacuum analyze hold",
        "vacuum analyze hold_line",
        "vacuum analyze hold_unit",
        "vacuum analyze unit");
  }

  /** Without triggers: an audit of a million rows is not what is measured. */
  private void execute(String... statements) throws SQLException {
    try (Connection connection = dataSource.getConnection();
        Statement plain = connection.createStatement()) {
      plain.execute("set session_replication_role = replica");
      for (String statement : statements) {
        plain.execute(statement);
      }
      plain.execute("set session_replication_role = origin");
    }
  }

  private static String model(int number) {
    return "bench/m-" + number;
  }

  private static HouseTerms house(int number) {
    return new HouseTerms(
        "bench-" + number,
        "Bench " + number,
        ZoneOffset.UTC,
        Currency.getInstance("EUR"),
        OpeningHours.ALWAYS,
        Duration.ofHours(4),
        false,
        BigDecimal.valueOf(2),
        0,
        1);
  }
}
