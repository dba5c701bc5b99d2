package org.standoff.kit.hold;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Supposing;
import org.standoff.kit.Caller;
import org.standoff.kit.DatabaseLost;
import org.standoff.kit.Period;
import org.standoff.kit.Sql;

/**
 * Many clients on two instances want the same few units, while the server ends their sessions,
 * statements run out of time and clients die without having heard an answer. Afterwards the tables
 * alone are asked.
 */
class NeverTwiceTest {

  private static final int CLIENTS = 64;
  private static final int REQUESTS_OF_A_CLIENT = 32;
  private static final int FEWER = 6;

  /** A backstop: how many requests are sent does not hang on how fast the machine is. */
  private static final Duration LONGEST = Duration.ofMinutes(3);

  private static final int RETRIES = 6;
  private static final int HOURS_AHEAD = 300;
  private static final List<String> HOUSES = List.of("quay", "mill");
  private static final List<String> MICROPHONES = List.of("core/a", "core/b", "core/c");

  private final OwnKit kit = new OwnKit();
  private final Map<String, Receipt> acknowledged = new ConcurrentHashMap<>();
  private final AtomicInteger sent = new AtomicInteger();
  private final AtomicInteger lost = new AtomicInteger();
  private final AtomicInteger ended = new AtomicInteger();
  private final AtomicBoolean over = new AtomicBoolean();

  @AfterEach
  void tearDown() {
    kit.close();
  }

  @Test
  void noUnitIsPromisedTwiceAndNothingAcknowledgedIsLost() throws Exception {
    storm(REQUESTS_OF_A_CLIENT);
    assertThat(twice()).isZero();
  }

  @Test
  void theServicePromisesNoUnitTwiceWhereNoConstraintStopsIt() throws Exception {
    kit.database.change("alter table hold_unit drop constraint no_unit_twice");
    storm(FEWER);
    assertThat(twice()).isZero();
  }

  /** Pairs of promises of one unit that have a moment in common, moment by moment compared. */
  private long twice() {
    return kit.database.count(
        """
        select count(*) from hold_unit a join hold_unit b on b.unit = a.unit and b.hold > a.hold
        where a.occupies and b.occupies
          and lower(a.busy) < upper(b.busy) and lower(b.busy) < upper(a.busy)
        """);
  }

  private void storm(int requests) throws Exception {
    kit.database.change("update standing_clock set at = null");
    for (String house : HOUSES) {
      kit.house(house, Duration.ofHours(1));
      for (String microphone : MICROPHONES) {
        kit.units(house, microphone, 4);
        kit.units(house, microphone, 2, Optional.of(house + microphone + "-pair"));
      }
    }
    List<Instance> instances =
        List.of(
            new Instance(kit.database.pool(10), kit.houses),
            new Instance(kit.database.pool(10), kit.houses));
    Instant end = Instant.now().plus(LONGEST);
    ExecutorService threads = Executors.newFixedThreadPool(CLIENTS + 1);
    try {
      Future<?> trouble = threads.submit(this::makeTrouble);
      List<Future<?>> clients = new ArrayList<>();
      for (int client = 0; client < CLIENTS; client++) {
        int number = client;
        clients.add(threads.submit(() -> client(number, requests, instances, end)));
      }
      for (Future<?> client : clients) {
        client.get(LONGEST.toSeconds() * 2, TimeUnit.SECONDS);
      }
      over.set(true);
      trouble.get();
    } finally {
      over.set(true);
      threads.shutdownNow();
    }
    compare(requests);
  }

  private void compare(int requests) {
    assertThat(sent.get()).as("requests sent").isGreaterThanOrEqualTo(CLIENTS * requests);
    assertThat(ended.get()).as("sessions ended").isPositive();
    assertThat(lost.get()).as("requests without an answer").isPositive();
    assertThat(acknowledged.size()).as("holds acknowledged").isGreaterThan(50);
    Map<String, String> stored = new ConcurrentHashMap<>();
    kit.database
        .rows(
            "select caller || ' ' || key as key, answer, hold from idempotency_key",
            row -> Map.entry(row.getString("key"), row.getString("hold") + row.getString("answer")))
        .forEach(
            row -> assertThat(stored.put(row.getKey(), row.getValue())).as("a key twice").isNull());
    acknowledged.forEach(
        (key, receipt) ->
            assertThat(stored.get(key))
                .as("acknowledged to %s", key)
                .isEqualTo(receipt.hold() + receipt.answer()));
    assertThat(
            kit.database.count(
                """
                select count(*) from hold h
                where (select count(*) from idempotency_key k where k.hold = h.id) <> 1
                """))
        .as("holds that no key made, or two")
        .isZero();
    assertThat(
            kit.database.count(
                """
                select count(*) from hold_line l join hold h on h.id = l.hold
                where h.state in ('tentative', 'confirmed', 'out', 'returned') and l.quantity <> (
                    select count(*) from hold_unit u where u.hold = l.hold and u.line = l.line)
                """))
        .as("lines without all their units")
        .isZero();
    assertThat(
            kit.database.count(
                """
                select count(*) from hold_unit u join hold h on h.id = u.hold
                where u.occupies <> (h.state in ('tentative', 'confirmed', 'out', 'returned'))
                """))
        .as("units that are busy for a hold that fell, or not for one that stands")
        .isZero();
  }

  private void client(int number, int requests, List<Instance> instances, Instant end) {
    Random random = new Random(number);
    Caller desk = Callers.desk("desk-" + number % 16);
    for (int i = 0; i < requests && Instant.now().isBefore(end); i++) {
      String key = number + "-" + i;
      HoldWish wish = wish(random, key);
      Retry retry =
          new Retry(
              key,
              key.getBytes(StandardCharsets.UTF_8),
              hold -> hold.id() + " " + hold.units().map(HeldUnit::serial).toList());
      hold(random, instances, desk, wish, retry)
          .ifPresent(receipt -> goOn(random, instances, desk, receipt));
    }
  }

  private static HoldWish wish(Random random, String reference) {
    Instant day = Instant.now().truncatedTo(ChronoUnit.HOURS);
    Instant from = day.plus(Duration.ofHours(1 + random.nextInt(HOURS_AHEAD)));
    Period period = new Period(from, from.plus(Duration.ofHours(1 + random.nextInt(12))));
    List<WantedLine> lines = new ArrayList<>();
    for (String house : HOUSES) {
      String microphone = MICROPHONES.get(random.nextInt(MICROPHONES.size()));
      if (lines.isEmpty() || random.nextBoolean()) {
        boolean matched = random.nextInt(4) == 0;
        lines.add(new WantedLine(house, microphone, matched ? 2 : 1 + random.nextInt(3), matched));
      }
    }
    return new HoldWish(reference, period, lines, Duration.ofHours(1), random.nextInt(4) == 0);
  }

  /** Asks until there is an answer, wherever; or dies before it comes. */
  private Optional<Receipt> hold(
      Random random, List<Instance> instances, Caller desk, HoldWish wish, Retry retry) {
    boolean dies = random.nextInt(10) == 0;
    for (int attempt = 0; attempt < RETRIES; attempt++) {
      Instance instance = instances.get(random.nextInt(instances.size()));
      sent.incrementAndGet();
      try {
        Receipt receipt = instance.holds.holdOnce(desk, wish, retry);
        if (dies) {
          return Optional.empty();
        }
        acknowledged.put(desk.subject() + " " + retry.key(), receipt);
        return Optional.of(receipt);
      } catch (Shortage refused) {
        return Optional.empty();
      } catch (KeyBusy again) {
        Thread.onSpinWait();
      } catch (DatabaseLost unknown) {
        lost.incrementAndGet();
        if (dies) {
          return Optional.empty();
        }
      }
    }
    return Optional.empty();
  }

  private static void goOn(Random random, List<Instance> instances, Caller desk, Receipt receipt) {
    Instance instance = instances.get(random.nextInt(instances.size()));
    try {
      switch (random.nextInt(6)) {
        case 0 -> instance.desk.release(desk, receipt.hold(), Supposing.NOTHING);
        case 1 -> instance.desk.confirm(desk, receipt.hold(), Supposing.NOTHING);
        case 2 -> {
          Hold hold = instance.desk.confirm(desk, receipt.hold(), Supposing.NOTHING);
          instance.house.checkOut(Callers.ADMIN, hold.id(), Supposing.NOTHING);
          instance.house.checkIn(Callers.ADMIN, hold.id(), Set.of(), Supposing.NOTHING);
        }
        case 3 -> {
          Hold hold = instance.holds.find(desk, receipt.hold());
          Instant later = hold.period().to().plus(Duration.ofHours(1));
          instance.desk.extend(desk, hold.id(), later, Supposing.NOTHING);
        }
        default -> instance.holds.find(desk, receipt.hold());
      }
    } catch (HoldRefused | DatabaseLost whatever) {
      // the tables say in the end what became of it
    }
  }

  /** Ends a session every now and then, and cancels a statement as its time-out would. */
  private void makeTrouble() {
    Random random = new Random(0);
    try (Connection connection = kit.database.connect()) {
      while (!over.get()) {
        String way = random.nextBoolean() ? "pg_terminate_backend" : "pg_cancel_backend";
        List<Boolean> done =
            Sql.list(
                connection,
                """
                select %s(pid) as done from pg_stat_activity
                where datname = current_database() and pid <> pg_backend_pid()
                  and state in ('active', 'idle in transaction')
                order by random() limit 1
                """
                    .formatted(way),
                row -> row.getBoolean("done"));
        ended.addAndGet(done.size());
        try (Statement pause = connection.createStatement()) {
          pause.execute("select pg_sleep(0.03)");
        }
      }
    } catch (SQLException refused) {
      throw new IllegalStateException(refused);
    }
  }
}
