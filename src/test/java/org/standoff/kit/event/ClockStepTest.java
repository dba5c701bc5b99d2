package org.standoff.kit.event;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.standoff.kit.hold.OwnKit.line;
import static org.standoff.kit.hold.OwnKit.period;
import static org.standoff.kit.hold.OwnKit.wish;

import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Holding;
import org.standoff.fixture.Supposing;
import org.standoff.kit.Caller;
import org.standoff.kit.hold.Callers;
import org.standoff.kit.hold.Hold;
import org.standoff.kit.hold.HoldRefused;
import org.standoff.kit.hold.HoldState;
import org.standoff.kit.hold.Instance;
import org.standoff.kit.hold.OwnKit;
import org.standoff.kit.hold.Retry;
import org.standoff.kit.hold.Shortage;
import org.standoff.kit.hold.WantedLine;

/**
 * The clock of the database steps, back and forth: what fell stays fallen, nothing is promised
 * twice, and the feed keeps the order in which things happened.
 */
class ClockStepTest {

  private static final Caller DESK = Callers.desk("north-desk");
  private static final Caller OTHER = Callers.desk("south-desk");
  private static final WantedLine ONE = line("quay", "core/a", 1);
  private static final Set<String> ENDS = Set.of("hold-expired", "hold-released", "hold-returned");

  private static final int CLIENTS = 8;
  private static final int REQUESTS = 40;

  private OwnKit kit;
  private Events events;

  @BeforeEach
  void setUp() {
    kit = new OwnKit();
    kit.house("quay", Duration.ofHours(1));
    kit.units("quay", "core/a", 1);
    events = new Events(kit.service.transactions, kit.service.expiry);
  }

  @AfterEach
  void tearDown() {
    kit.close();
  }

  @Test
  void whoOnlyFollowsTheFeedIsToldWhatFell() {
    Hold hold = kit.hold(DESK, wish("r", period(5, 9), ONE));
    kit.clockAt(Duration.ofHours(2));
    assertThat(events.after(Optional.of(DESK), EventCursor.START, 10).events())
        .filteredOn(event -> event.hold().equals(Optional.of(hold.id())))
        .extracting(Event::kind)
        .containsExactly("hold-tentative", "hold-expired");
  }

  @Test
  void aStepBackRaisesNothingThatFellAndTakesNoUnitFromWhoHasItNow() {
    Hold fallen = kit.hold(DESK, wish("r", period(5, 9), ONE));
    kit.clockAt(Duration.ofHours(2));
    Hold next = kit.hold(OTHER, wish("s", period(5, 9), ONE));

    kit.clockAt(Duration.ofDays(-3));
    assertThat(kit.state(fallen)).isEqualTo(HoldState.EXPIRED);
    assertThat(kit.state(next)).isEqualTo(HoldState.TENTATIVE);
    assertThatThrownBy(() -> kit.hold(DESK, wish("t", period(5, 9), ONE)))
        .isInstanceOf(Shortage.class);

    kit.clockAt(Duration.ofHours(4).minusMillis(1));
    assertThat(kit.state(next)).as("its moment is the one it was told").isEqualTo(next.state());
    kit.clockAt(Duration.ofHours(4));
    assertThat(kit.state(next)).isEqualTo(HoldState.EXPIRED);
  }

  @Test
  void whatIsOutWhenTheClockStepsBackCanBeHandedBack() {
    Hold out = kit.out(DESK, wish("r", period(0, 9), ONE));
    kit.clockAt(Duration.ofDays(-3));
    kit.service.house.checkIn(Callers.ADMIN, out.id(), Set.of(), Supposing.NOTHING);
    assertThat(kit.state(out)).isEqualTo(HoldState.RETURNED);
  }

  @Test
  void aKeyHasItsAnswerOnBothSidesOfAStepBack() {
    Retry retry =
        new Retry("key", "key".getBytes(StandardCharsets.UTF_8), hold -> hold.id().toString());
    var first = kit.service.holds.holdOnce(DESK, wish("r", period(5, 9), ONE), retry);
    kit.clockAt(Duration.ofDays(-3));
    assertThat(kit.service.holds.holdOnce(DESK, wish("r", period(5, 9), ONE), retry))
        .isEqualTo(first);
  }

  @Test
  void theFeedGoesOnFromItsCursorWhereverTheClockStands() {
    Hold hold = kit.hold(DESK, wish("r", period(5, 9), ONE));
    EventCursor seen = after(EventCursor.START, 100).next();
    kit.clockAt(Duration.ofDays(-3));
    kit.service.desk.release(DESK, hold.id(), Supposing.NOTHING);
    kit.clockAt(Duration.ofHours(3));
    Hold late = kit.hold(OTHER, wish("s", period(5, 9), ONE));
    assertThat(after(seen, 100).events())
        .extracting(event -> event.kind() + " " + event.hold().map(UUID::toString).orElse(""))
        .containsExactly("hold-released " + hold.id(), "hold-tentative " + late.id());
  }

  @Test
  void whileItJumpsInMidTrafficNothingIsPromisedTwiceAndTheFeedStaysInOrder() throws Exception {
    kit.units("quay", "core/a", 2);
    List<Instance> instances =
        List.of(
            new Instance(kit.database.pool(6), kit.houses),
            new Instance(kit.database.pool(6), kit.houses));
    List<Event> followed = new ArrayList<>();
    EventCursor cursor = EventCursor.START;
    ExecutorService threads = Executors.newFixedThreadPool(CLIENTS);
    try {
      List<Future<?>> clients = new ArrayList<>();
      for (int client = 0; client < CLIENTS; client++) {
        Random random = new Random(client);
        clients.add(threads.submit(() -> client(random, instances)));
      }
      threads.shutdown();
      while (!threads.awaitTermination(20, TimeUnit.MILLISECONDS)) {
        cursor = follow(cursor, followed);
      }
      for (Future<?> client : clients) {
        client.get();
      }
    } finally {
      threads.shutdownNow();
    }
    follow(cursor, followed);

    assertThat(
            kit.database.count(
                """
                select count(*) from hold_unit a join hold_unit b on b.unit = a.unit and b.hold > a.hold
                where a.occupies and b.occupies and a.busy && b.busy
                """))
        .as("units promised twice")
        .isZero();
    assertThat(followed)
        .as("read bit by bit while it grew, and at once")
        .isEqualTo(after(EventCursor.START, 100_000).events());
    assertEachHoldHasOneBeginningAndNothingAfterItsEnd(followed);
  }

  private void client(Random random, List<Instance> instances) {
    Caller desk = random.nextBoolean() ? DESK : OTHER;
    for (int request = 0; request < REQUESTS; request++) {
      Instance instance = instances.get(random.nextInt(instances.size()));
      if (random.nextInt(4) == 0) {
        kit.clockAt(Duration.ofHours(random.nextInt(144) - 72L));
      }
      double from = random.nextInt(96) - 48;
      try {
        Hold hold =
            Holding.once(
                instance.holds,
                desk,
                wish(
                    UUID.randomUUID().toString(),
                    period(from, from + 1 + random.nextInt(12)),
                    line("quay", "core/a", 1 + random.nextInt(2))));
        goOn(random, instance, desk, hold);
      } catch (HoldRefused asItShould) {
        // short, over, or fallen meanwhile: the tables say in the end what became of it
      }
    }
  }

  private void goOn(Random random, Instance instance, Caller desk, Hold hold) {
    switch (random.nextInt(4)) {
      case 0 -> instance.desk.release(desk, hold.id(), Supposing.NOTHING);
      case 1 -> {
        instance.desk.confirm(desk, hold.id(), Supposing.NOTHING);
        instance.house.checkOut(Callers.ADMIN, hold.id(), Supposing.NOTHING);
        kit.clockAt(Duration.ofHours(random.nextInt(144) - 72L));
        instance.house.checkIn(Callers.ADMIN, hold.id(), Set.of(), Supposing.NOTHING);
      }
      case 2 -> {
        Instant later = hold.period().to().plus(Duration.ofHours(1));
        instance.desk.extend(desk, hold.id(), later, Supposing.NOTHING);
      }
      default -> instance.holds.find(desk, hold.id());
    }
  }

  /** Small pages, so that many cursors are used. */
  private EventCursor follow(EventCursor cursor, List<Event> followed) {
    Feed feed = after(cursor, 7);
    followed.addAll(feed.events());
    while (feed.more()) {
      feed = after(feed.next(), 7);
      followed.addAll(feed.events());
    }
    return feed.next();
  }

  private Feed after(EventCursor cursor, int most) {
    return events.after(Optional.of(Callers.ADMIN), cursor, most);
  }

  private static void assertEachHoldHasOneBeginningAndNothingAfterItsEnd(List<Event> followed) {
    followed.stream()
        .filter(event -> event.hold().isPresent())
        .collect(
            Collectors.groupingBy(
                event -> event.hold().get(), Collectors.mapping(Event::kind, Collectors.toList())))
        .forEach(
            (hold, kinds) -> {
              assertThat(kinds.get(0)).as("%s %s", hold, kinds).isEqualTo("hold-tentative");
              assertThat(kinds.subList(0, kinds.size() - 1))
                  .as("%s %s", hold, kinds)
                  .noneMatch(ENDS::contains);
            });
  }
}
