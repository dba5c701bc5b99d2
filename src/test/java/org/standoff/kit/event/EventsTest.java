package org.standoff.kit.event;

import static org.assertj.core.api.Assertions.assertThat;

import java.sql.Connection;
import java.sql.SQLException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.OwnDatabase;
import org.standoff.kit.Caller;
import org.standoff.kit.Sql;
import org.standoff.kit.hold.Callers;
import org.standoff.kit.hold.Hold;
import org.standoff.kit.hold.Instance;
import org.standoff.kit.hold.OwnKit;
import org.standoff.kit.house.FixedHouses;

class EventsTest {

  private OwnDatabase database;
  private Events events;

  @BeforeEach
  void setUp() {
    database = OwnDatabase.make();
    Instance service = new Instance(database.pool(2), new FixedHouses());
    events = new Events(service.transactions, service.expiry);
  }

  @AfterEach
  void tearDown() {
    database.close();
  }

  private static void tell(Connection connection, String kind) throws SQLException {
    Sql.change(connection, "insert into event (kind) values (?)", kind);
  }

  private Connection open() throws SQLException {
    Connection connection = database.connect();
    connection.setAutoCommit(false);
    return connection;
  }

  private Feed after(EventCursor cursor) {
    return events.after(Optional.empty(), cursor, 100);
  }

  private static List<String> kinds(Feed feed) {
    return feed.events().stream().map(Event::kind).toList();
  }

  @Test
  void nothingIsSkippedWhereAnEarlierTransactionCommitsLater() throws SQLException {
    try (Connection slow = open();
        Connection quick = open()) {
      tell(slow, "slow");
      tell(quick, "quick");
      quick.commit();
      Feed before = after(EventCursor.START);
      assertThat(kinds(before)).as("the slow one may still come before it").isEmpty();
      slow.commit();
      Feed then = after(before.next());
      assertThat(kinds(then)).containsExactly("slow", "quick");
      assertThat(after(then.next()).events()).isEmpty();
      assertThat(after(then.next()).next()).isEqualTo(then.next());
    }
  }

  @Test
  void whatRestsOnWhatWasCommittedComesAfterItHoweverEarlyItsTransactionBegan()
      throws SQLException {
    try (Connection early = open();
        Connection late = open()) {
      Sql.list(early, "select pg_current_xact_id()", row -> true);
      tell(late, "cause");
      late.commit();
      assertThat(after(EventCursor.START).events()).as("the early one may still tell").isEmpty();
      tell(early, "effect");
      early.commit();
      assertThat(kinds(after(EventCursor.START))).containsExactly("cause", "effect");
    }
  }

  @Test
  void aTransactionThatBeganLaterIsNotShownBeforeAnEarlierOne() throws SQLException {
    List<String> seen = new ArrayList<>();
    try (Connection first = open();
        Connection second = open();
        Connection third = open()) {
      tell(first, "first");
      tell(second, "second");
      tell(third, "third");
      tell(first, "first again");
      first.commit();
      Feed one = after(EventCursor.START);
      seen.addAll(kinds(one));
      assertThat(seen).containsExactly("first", "first again");
      third.commit();
      Feed two = after(one.next());
      assertThat(kinds(two)).isEmpty();
      second.rollback();
      Feed three = after(two.next());
      assertThat(kinds(three)).as("what was taken back never was").containsExactly("third");
    }
  }

  @Test
  void transactionsAreInTheOrderOfTheirNumbersAndNotOfTheirDigits() {
    for (int tx : new int[] {9, 10, 99, 100}) {
      database.change("insert into event (kind, tx) values (?, ?::text::xid8)", "tx-" + tx, tx);
    }
    Feed two = events.after(Optional.empty(), EventCursor.START, 2);
    assertThat(kinds(two)).containsExactly("tx-9", "tx-10");
    assertThat(kinds(after(two.next()))).containsExactly("tx-99", "tx-100");
  }

  @Test
  void theFeedReadsTheSameAgain() {
    for (int i = 0; i < 7; i++) {
      database.change("insert into event (kind) values (?)", "e" + i);
    }
    Feed all = after(EventCursor.START);
    assertThat(kinds(all)).containsExactly("e0", "e1", "e2", "e3", "e4", "e5", "e6");
    assertThat(all.more()).isFalse();
    Feed three = events.after(Optional.empty(), EventCursor.START, 3);
    assertThat(kinds(three)).containsExactly("e0", "e1", "e2");
    assertThat(three.more()).isTrue();
    assertThat(kinds(events.after(Optional.empty(), three.next(), 3)))
        .containsExactly("e3", "e4", "e5");
    assertThat(after(EventCursor.START)).isEqualTo(all);
  }

  @Test
  void aDeskSeesItsOwnHoldsAndAnyoneWhatHousesDid() {
    database.change("insert into event (kind) values ('kit-changed')");
    database.change("insert into event (kind, desk) values ('hold-tentative', 'north-desk')");
    database.change("insert into event (kind, desk) values ('hold-confirmed', 'south-desk')");
    assertThat(kinds(after(EventCursor.START))).containsExactly("kit-changed");
    assertThat(seenBy(Callers.desk("north-desk"))).containsExactly("kit-changed", "hold-tentative");
    assertThat(seenBy(Callers.publisher("quay"))).containsExactly("kit-changed");
    assertThat(seenBy(Callers.ADMIN))
        .containsExactly("kit-changed", "hold-tentative", "hold-confirmed");
  }

  @Test
  void aHouseIsNotToldOfTheUnitOfAnotherInTheSameHold() {
    try (OwnKit kit = new OwnKit()) {
      String quay = kit.house("quay", Duration.ZERO);
      String moor = kit.house("moor", Duration.ZERO);
      kit.units(quay, "core/x", 1);
      kit.units(moor, "core/x", 1);
      Hold hold =
          kit.hold(
              Callers.desk("north-desk"),
              OwnKit.wish(
                  "r",
                  OwnKit.period(24, 48),
                  OwnKit.line(quay, "core/x", 1),
                  OwnKit.line(moor, "core/x", 1)));
      kit.database.change(
          "insert into event (kind, hold, desk, detail)"
              + " values ('hold-hit', ?, 'north-desk', jsonb_build_object('house', ?, 'serial', 'S1'))",
          hold.id(),
          quay);
      events = new Events(kit.service.transactions, kit.service.expiry);
      assertThat(seenBy(Callers.publisher(moor))).endsWith("hold-tentative");
      assertThat(seenBy(Callers.publisher(quay))).endsWith("hold-tentative", "hold-hit");
      assertThat(seenBy(Callers.desk("north-desk"))).endsWith("hold-tentative", "hold-hit");
    }
  }

  @Test
  void aReaderWhoMaySeeNothingOfAStretchStillGetsOn() {
    for (int i = 0; i < 5; i++) {
      database.change("insert into event (kind, desk) values ('hold-tentative', 'north-desk')");
    }
    database.change("insert into event (kind) values ('kit-changed')");
    Feed first = events.after(Optional.empty(), EventCursor.START, 5);
    assertThat(first.events()).isEmpty();
    assertThat(first.more()).isTrue();
    assertThat(kinds(events.after(Optional.empty(), first.next(), 5)))
        .containsExactly("kit-changed");
  }

  private List<String> seenBy(Caller caller) {
    return kinds(events.after(Optional.of(caller), EventCursor.START, 100));
  }
}
