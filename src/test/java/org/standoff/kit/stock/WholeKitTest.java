package org.standoff.kit.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Kit;
import org.standoff.fixture.Supposing;
import org.standoff.kit.Caller;
import org.standoff.kit.Model;
import org.standoff.kit.ModelLocks;
import org.standoff.kit.Role;
import org.standoff.kit.Sql;
import org.standoff.kit.pack.HousePacks;

@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class WholeKitTest {
  private static final Caller ADMIN = new Caller("admin", Set.of(Role.ADMIN), Optional.empty());
  private static final String DYNAMIC = "core/dyn-card-1";
  private static final Path DYNAMIC_FILE = Path.of("catalogue/core/microphones/dyn-card-1.yaml");

  private static final String PACK =
      """
      format: 1
      id: %s
      title: A pack of a test
      version: 1.0.0
      licence: Apache-2.0
      publisher: A test
      """;

  @Inject WholeKit wholeKit;
  @Inject Stock stock;
  @Inject HousePacks housePacks;
  @Inject DataSource dataSource;

  /** A booking that was first keeps its unit; the publish waits for it and is refused. */
  @Test
  void aBookingThatIsUnderWayIsWaitedFor() throws SQLException {
    Kit kit = Kit.house();
    String house = kit.id();
    publish(house, List.of(unit("A"), unit("B")));
    UUID hold = UUID.randomUUID();
    try (Connection booking = dataSource.getConnection()) {
      booking.setAutoCommit(false);
      ModelLocks.take(booking, List.of(new Model(house, DYNAMIC)));
      CompletableFuture<PublishReport> publishing =
          CompletableFuture.supplyAsync(() -> publish(house, List.of(unit("B"))));
      waitForALockOf(house, "advisory");
      book(booking, hold, house, "A");
      booking.commit();
      booking.setAutoCommit(true);
      Throwable refused = catchThrowable(publishing::join);
      assertThat(refused).isInstanceOf(CompletionException.class);
      assertThat(refused.getCause()).isInstanceOf(UnitsUnderHold.class);
      assertThat(((UnitsUnderHold) refused.getCause()).promises())
          .singleElement()
          .satisfies(promise -> assertThat(promise.hold()).isEqualTo(hold));
    }
    assertThat(states(house)).containsEntry("A", UnitState.AVAILABLE);
  }

  @Test
  void whoWaitsGetsAUnitThatIsAddedOrMended() throws SQLException {
    String house = Kit.house().id();
    UUID first = waiting(house);
    publish(house, List.of(unit("A").in(UnitState.IN_REPAIR)));
    assertThat(state(first)).isEqualTo("waiting");
    publish(house, List.of(unit("A")));
    assertThat(state(first)).isEqualTo("tentative");
    UUID second = waiting(house);
    stock.put(ADMIN, house, unit("B"), Supposing.NOTHING);
    assertThat(state(second)).isEqualTo("tentative");
  }

  @Test
  void whoWaitsForAMatchedPairGetsItWhenAGroupBecomesOne() throws SQLException {
    String house = Kit.house().id();
    publish(house, List.of(unit("A"), unit("B")));
    UUID hold = waiting(house, 2, true);
    stock.put(ADMIN, house, unit("A", "pair"), Supposing.NOTHING);
    assertThat(state(hold)).isEqualTo("waiting");
    stock.put(ADMIN, house, unit("B", "pair"), Supposing.NOTHING);
    assertThat(state(hold)).isEqualTo("tentative");
  }

  @Test
  void whoWaitsGetsTheRestOfAGroupWhenItsMemberInRepairLeavesIt() throws SQLException {
    KitUnit ill = unit("C", "trio").in(UnitState.IN_REPAIR);
    List<KitUnit> kit = List.of(unit("A", "trio"), unit("B", "trio"), ill);
    String retires = Kit.house().id();
    publish(retires, kit);
    UUID first = waiting(retires, 2, true);
    stock.retire(ADMIN, retires, "C", Supposing.NOTHING);
    assertThat(state(first)).isEqualTo("tentative");
    String publishes = Kit.house().id();
    publish(publishes, kit);
    UUID second = waiting(publishes, 2, true);
    publish(publishes, kit.subList(0, 2));
    assertThat(state(second)).isEqualTo("tentative");
  }

  @Test
  void publishesAtTheSameTimeLeaveOneOfTheirKits() {
    String house = Kit.house().id();
    List<List<KitUnit>> kits =
        IntStream.range(0, 6)
            .mapToObj(
                kit -> IntStream.range(0, 40).mapToObj(i -> unit("K" + (kit * 20 + i))).toList())
            .toList();
    kits.stream()
        .map(kit -> CompletableFuture.runAsync(() -> publish(house, kit)))
        .toList()
        .forEach(CompletableFuture::join);
    Set<String> left = available(house);
    assertThat(kits.stream().map(WholeKitTest::serials)).contains(left);
    assertThat(stock.revision(house)).isEqualTo(7);
  }

  /** Against a map as the model: whatever is published, what is there is what was told. */
  @Test
  void whateverIsPublishedIsWhatIsThereAndTheReportSaysWhatChanged() {
    String house = Kit.house().id();
    Random random = new Random(20_270_611);
    Map<String, KitUnit> model = new HashMap<>();
    for (int round = 0; round < 40; round++) {
      List<KitUnit> kit = new ArrayList<>();
      for (int i = 0; i < 30; i++) {
        if (random.nextInt(3) > 0) {
          UnitState state = UnitState.values()[random.nextInt(3)];
          kit.add(
              new KitUnit("U" + i, DYNAMIC, null, state, 100 * random.nextInt(2), "", null, null));
        }
      }
      long before = stock.revision(house);
      PublishReport report = publish(house, kit);
      Map<String, KitUnit> told = new HashMap<>();
      kit.forEach(unit -> told.put(unit.serial(), unit));
      long added = told.keySet().stream().filter(serial -> !model.containsKey(serial)).count();
      long retired =
          model.values().stream()
              .filter(unit -> unit.state() != UnitState.RETIRED)
              .filter(
                  unit ->
                      !told.containsKey(unit.serial())
                          || told.get(unit.serial()).state() == UnitState.RETIRED)
              .count();
      long unchanged = kit.stream().filter(unit -> unit.equals(model.get(unit.serial()))).count();
      assertThat(report.added().count()).isEqualTo(added);
      assertThat(report.retired().count()).isEqualTo(retired);
      assertThat(report.unchanged().count()).isEqualTo(unchanged);
      long all = added + report.changed().count() + retired + unchanged;
      long gone =
          model.values().stream()
              .filter(unit -> unit.state() != UnitState.RETIRED)
              .filter(unit -> !told.containsKey(unit.serial()))
              .count();
      assertThat(all).isEqualTo(kit.size() + gone);
      model.replaceAll(
          (serial, unit) -> told.containsKey(serial) ? unit : unit.in(UnitState.RETIRED));
      model.putAll(told);
      Map<String, UnitState> states = new HashMap<>();
      model.forEach((serial, unit) -> states.put(serial, unit.state()));
      assertThat(states(house)).isEqualTo(states);
      assertThat(stock.revision(house)).isEqualTo(unchanged == all ? before : before + 1);
      assertThat(publish(house, kit).unchanged().count()).isEqualTo(kit.size());
      assertThat(stock.revision(house)).isEqualTo(unchanged == all ? before : before + 1);
    }
  }

  private PublishReport publish(String house, List<KitUnit> kit) {
    return wholeKit.publish(ADMIN, house, kit, false, Supposing.NOTHING);
  }

  private static KitUnit unit(String serial) {
    return new KitUnit(serial, DYNAMIC, null, UnitState.AVAILABLE, 400, "", null, null);
  }

  private static KitUnit unit(String serial, String group) {
    return new KitUnit(serial, DYNAMIC, group, UnitState.AVAILABLE, 400, "", null, null);
  }

  private static Set<String> serials(List<KitUnit> kit) {
    return Set.copyOf(kit.stream().map(KitUnit::serial).toList());
  }

  private Set<String> available(String house) {
    return Set.copyOf(
        stock.list(house, new UnitFilter(Optional.empty(), Optional.empty()), "", 1_000).stream()
            .map(stored -> stored.unit().serial())
            .toList());
  }

  private Map<String, UnitState> states(String house) {
    Map<String, UnitState> states = new HashMap<>();
    for (UnitState state : UnitState.values()) {
      stock
          .list(house, new UnitFilter(Optional.empty(), Optional.of(state)), "", 1_000)
          .forEach(stored -> states.put(stored.unit().serial(), state));
    }
    return states;
  }

  /** Until somebody waits for a lock of the kind, which here can only be the publish. */
  private void waitForALockOf(String house, String kind) {
    await(house)
        .until(
            () -> {
              try (Connection connection = dataSource.getConnection()) {
                return !Sql.list(
                        connection,
                        "select 1 from pg_locks where locktype = '%s' and not granted"
                            .formatted(kind),
                        row -> true)
                    .isEmpty();
              }
            });
  }

  /** A hold of one unit for tomorrow, in line. */
  private static UUID waiting(String house) {
    return waiting(house, 1, false);
  }

  private static UUID waiting(String house, int quantity, boolean matched) {
    UUID hold = UUID.randomUUID();
    Kit.sql(
        "insert into hold (id, desk, reference, held_from, held_to, state, lifetime_min,"
            + " expires_at) values (?, 'desk', ?, now() + interval '1 day',"
            + " now() + interval '2 days', 'waiting', 60, now() + interval '1 day')",
        hold,
        hold.toString());
    Kit.sql(
        "insert into hold_line (hold, line, house, microphone, quantity, matched)"
            + " values (?, 1, ?, ?, ?, ?)",
        hold,
        house,
        DYNAMIC,
        quantity,
        matched);
    return hold;
  }

  private String state(UUID hold) throws SQLException {
    try (Connection connection = dataSource.getConnection()) {
      return Sql.first(
              connection,
              "select state from hold where id = ?",
              row -> row.getString("state"),
              hold)
          .orElseThrow();
    }
  }

  /** The pack is in the catalogue still when the publish begins, and gone when it is let in. */
  @Test
  void aPackThatIsBeingTakenBackIsWaitedForAndItsMicrophonesAreUnknownThen() throws Exception {
    String house = Kit.house().id();
    String microphone = house + "/twin-of-dyn-card-1";
    housePacks.put(
        ADMIN,
        house,
        house,
        Map.of(
            "pack.yaml", PACK.formatted(house),
            "microphones/twin-of-dyn-card-1.yaml", Files.readString(DYNAMIC_FILE)),
        Supposing.NOTHING);
    KitUnit unit = new KitUnit("A", microphone, null, UnitState.AVAILABLE, 400, "", null, null);
    publish(house, List.of(unit));
    publish(house, List.of());
    try (Connection taking = dataSource.getConnection()) {
      taking.setAutoCommit(false);
      Sql.change(
          taking, "update pack set files = null, revision = revision + 1 where id = ?", house);
      CompletableFuture<PublishReport> publishing =
          CompletableFuture.supplyAsync(() -> publish(house, List.of(unit)));
      waitForALockOf(house, "transactionid");
      taking.commit();
      taking.setAutoCommit(true);
      assertThat(catchThrowable(publishing::join)).hasCauseInstanceOf(FaultyKit.class);
    }
    assertThat(available(house)).isEmpty();
  }

  private static void book(Connection connection, UUID hold, String house, String serial)
      throws SQLException {
    Sql.change(
        connection,
        "insert into hold (id, desk, reference, held_from, held_to, state, lifetime_min)"
            + " values (?, 'desk', ?, now(), now() + interval '2 days', 'confirmed', 60)",
        hold,
        hold.toString());
    Sql.change(
        connection,
        "insert into hold_unit (hold, line, unit, house, microphone, day_rate_minor, busy)"
            + " select ?, 0, id, house, microphone, day_rate_minor, tstzrange(now(), now() + interval '2 days')"
            + " from unit where house = ? and serial = ?",
        hold,
        house,
        serial);
  }
}
