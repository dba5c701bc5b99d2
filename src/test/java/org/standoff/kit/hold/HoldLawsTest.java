package org.standoff.kit.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.UUID;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;
import net.jqwik.api.lifecycle.AfterTry;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.standoff.fixture.Supposing;
import org.standoff.kit.Caller;
import org.standoff.kit.Model;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.OpeningHours;

/**
 * Random histories over nights in which the clocks change, step by step beside a model that knows
 * only quarters of an hour. Whatever the service answers, the model must have found too.
 */
class HoldLawsTest {

  private static final int STEPS = 40;
  private static final int HORIZON = 4 * 24 * 4;
  private static final int SOON = 8;
  private static final Instant SPRING = Instant.parse("2027-03-27T06:00:00Z");
  private static final Instant AUTUMN = Instant.parse("2026-10-24T06:00:00Z");
  private static final OpeningHours DAYS =
      OpeningHours.parse(
          "mon 08:00-17:30, tue 08:00-17:30, wed 08:00-17:30, thu 08:00-17:30, fri 08:00-17:30,"
              + " sat 01:30-12:00, sun 03:00-20:00");

  private static OwnKit kit;

  private Random random;
  private TickModel model;
  private int references;

  @BeforeContainer
  static void openKit() {
    kit = new OwnKit();
  }

  @AfterContainer
  static void closeKit() {
    kit.close();
  }

  @AfterTry
  void clear() {
    kit.database.change(
        "truncate house, unit, hold, hold_line, hold_unit, idempotency_key, event, audit cascade");
  }

  @Property(tries = 40, seed = "17", shrinking = ShrinkingMode.OFF)
  void theServiceHoldsWhatTheModelHolds(@ForAll long history) {
    random = new Random(history);
    model = new TickModel(random.nextBoolean() ? SPRING : AUTUMN);
    references = 0;
    kit.database.clockAt(model.at(0));
    house("quay", OpeningHours.ALWAYS, Duration.ofMinutes(45), false);
    house("mill", DAYS, Duration.ofHours(2), random.nextBoolean());
    for (String house : model.houses.keySet()) {
      units(house, "core/a", 2, "");
      units(house, "core/a", 2, "pair");
      units(house, "core/a", 3, "trio");
      units(house, "core/b", 2, "");
    }
    for (int step = 0; step < STEPS; step++) {
      step();
      settleAndCompare();
    }
    compareCounts();
  }

  /** Whole groups come and go, with a line of those who wait for one. */
  @Property(tries = 15, seed = "18", shrinking = ShrinkingMode.OFF)
  void whoWaitsIsServedWhateverAHouseDoesWithItsGroups(@ForAll long history) {
    random = new Random(history);
    model = new TickModel(AUTUMN);
    references = 0;
    kit.database.clockAt(model.at(0));
    house("quay", OpeningHours.ALWAYS, Duration.ZERO, false);
    units("quay", "core/a", 1, "");
    units("quay", "core/a", 2, "pair");
    units("quay", "core/a", 3, "trio");
    units("quay", "core/b", 6, "");
    for (int step = 0; step < STEPS; step++) {
      switch (random.nextInt(6)) {
        case 0, 1 -> hold();
        case 2 -> wait(1 + random.nextInt(24));
        case 3 -> release();
        default -> changeUnit();
      }
      settleAndCompare();
    }
  }

  private void house(String id, OpeningHours hours, Duration turnRound, boolean dropBox) {
    kit.house(id, "Europe/Vienna", hours, turnRound, dropBox);
    model.houses.put(id, kit.houses.find(id).orElseThrow());
  }

  private void units(String house, String microphone, int count, String group) {
    Optional<String> matched = Optional.of(group).filter(name -> !name.isEmpty());
    for (String serial : kit.units(house, microphone, count, matched)) {
      long rate = 1000 + 500 * random.nextInt(3);
      kit.database.change("update unit set day_rate_minor = ? where serial = ?", rate, serial);
      model.units.put(
          serial, new TickModel.Unit(new Model(house, microphone), serial, rate, group));
    }
  }

  private void step() {
    switch (random.nextInt(17)) {
      case 0, 1, 2, 3, 4, 5 -> hold();
      case 6, 7 -> confirm();
      case 8 -> release();
      case 9, 10 -> extend();
      case 11, 12 -> checkOut();
      case 13 -> checkIn();
      case 14 -> changeUnit();
      default -> wait(1 + random.nextInt(24));
    }
  }

  private void wait(int ticks) {
    model.now += ticks;
    kit.database.clockAt(model.at(model.now));
    model.holds.values().stream()
        .filter(
            hold ->
                (hold.state == HoldState.WAITING || hold.state == HoldState.TENTATIVE)
                    && hold.expiresAt <= model.now)
        .forEach(
            hold -> {
              hold.state = HoldState.EXPIRED;
              hold.pieces.forEach(piece -> piece.occupies = false);
            });
  }

  private List<WantedLine> lines() {
    List<WantedLine> lines = new ArrayList<>();
    for (String house : model.houses.keySet()) {
      for (String microphone : List.of("core/a", "core/b")) {
        if (random.nextInt(3) == 0) {
          lines.add(new WantedLine(house, microphone, 1 + random.nextInt(4), false));
        }
        if (random.nextInt(6) == 0) {
          lines.add(new WantedLine(house, microphone, 1 + random.nextInt(3), false));
        }
      }
      if (random.nextInt(3) == 0) {
        lines.add(new WantedLine(house, "core/a", 2 + random.nextInt(2), true));
      }
    }
    return lines.isEmpty() ? List.of(new WantedLine("quay", "core/a", 1, false)) : lines;
  }

  private void hold() {
    List<WantedLine> lines = lines();
    int from = model.now + random.nextInt(random.nextBoolean() ? SOON : HORIZON / 2);
    int to = from + 1 + random.nextInt(random.nextBoolean() ? SOON : HORIZON / 4);
    if (lines.stream().anyMatch(line -> line.house().equals("mill")) && random.nextInt(4) > 0) {
      from = model.nextOpening(model.terms("mill"), from);
      to = model.nextOpening(model.terms("mill"), Math.max(to, from + 1));
    }
    int lifetime = 1 + random.nextInt(120);
    boolean mayWait = random.nextBoolean();
    HoldWish wish =
        new HoldWish(
            "r" + references++,
            model.period(from, to),
            lines,
            TickModel.TICK.multipliedBy(lifetime),
            mayWait);
    Caller desk = Callers.desk("desk-" + random.nextInt(3));
    if (!model.isWelcome(lines, from, to)) {
      assertThatThrownBy(() -> kit.hold(desk, wish)).isInstanceOf(WishRefused.class);
      return;
    }
    boolean possible = model.isPossible(lines, from, to);
    if (!possible && !(mayWait && from > model.now)) {
      Shortage shortage = catchThrowableOfType(Shortage.class, () -> kit.hold(desk, wish));
      assertThat(shortage).as("%s at %s", wish, model.now).isNotNull();
      compareShortfalls(lines, model.most(lines, from, to), shortage.shortfalls());
      return;
    }
    TickModel.Held held = new TickModel.Held(wish, model.now, from, to);
    Hold answer = kit.hold(desk, wish);
    if (possible) {
      model.take(held, answer);
    }
    held.state = possible ? HoldState.TENTATIVE : HoldState.WAITING;
    held.expiresAt = possible ? model.now + lifetime : from;
    model.holds.put(answer.id(), held);
  }

  private static void compareShortfalls(
      List<WantedLine> lines, List<Integer> most, List<Shortfall> told) {
    List<Shortfall> expected = new ArrayList<>();
    for (int line = 0; line < lines.size(); line++) {
      if (most.get(line) < lines.get(line).quantity()) {
        expected.add(new Shortfall(line, lines.get(line), most.get(line)));
      }
    }
    assertThat(told).isEqualTo(expected);
  }

  private record Chosen(UUID id, TickModel.Held held) {}

  /** Mostly one that takes the step, now and then any. */
  private Optional<Chosen> any(HoldStep step) {
    List<UUID> ids =
        model.holds.entrySet().stream()
            .filter(entry -> entry.getValue().state.steps().contains(step))
            .map(Map.Entry::getKey)
            .toList();
    if (ids.isEmpty() || random.nextInt(5) == 0) {
      ids = List.copyOf(model.holds.keySet());
    }
    return ids.isEmpty()
        ? Optional.empty()
        : Optional.of(ids.get(random.nextInt(ids.size())))
            .map(id -> new Chosen(id, model.holds.get(id)));
  }

  private void confirm() {
    any(HoldStep.CONFIRM)
        .ifPresent(
            chosen -> {
              if (chosen.held.state == HoldState.TENTATIVE) {
                kit.service.desk.confirm(Callers.ADMIN, chosen.id, Supposing.NOTHING);
                chosen.held.state = HoldState.CONFIRMED;
              } else {
                assertThatThrownBy(
                        () -> kit.service.desk.confirm(Callers.ADMIN, chosen.id, Supposing.NOTHING))
                    .isInstanceOf(StepRefused.class);
              }
            });
  }

  private void release() {
    any(HoldStep.RELEASE)
        .ifPresent(
            chosen -> {
              if (Set.of(HoldState.WAITING, HoldState.TENTATIVE, HoldState.CONFIRMED)
                  .contains(chosen.held.state)) {
                kit.service.desk.release(Callers.ADMIN, chosen.id, Supposing.NOTHING);
                chosen.held.state = HoldState.RELEASED;
                chosen.held.letGo(piece -> true);
              } else if (chosen.held.state == HoldState.OUT
                  && chosen.held.pieces.stream().anyMatch(piece -> piece.occupies && !piece.out)) {
                kit.service.desk.release(Callers.ADMIN, chosen.id, Supposing.NOTHING);
                chosen.held.letGo(piece -> true);
                chosen.held.settle();
              } else {
                assertThatThrownBy(
                        () -> kit.service.desk.release(Callers.ADMIN, chosen.id, Supposing.NOTHING))
                    .isInstanceOf(StepRefused.class);
              }
            });
  }

  private void extend() {
    any(HoldStep.EXTEND)
        .ifPresent(chosen -> extend(chosen, chosen.held.to + 1 + random.nextInt(HORIZON / 8)));
  }

  private void extend(Chosen chosen, int to) {
    TickModel.Held held = chosen.held;
    boolean live =
        Set.of(HoldState.WAITING, HoldState.TENTATIVE, HoldState.CONFIRMED, HoldState.OUT)
            .contains(held.state);
    Runnable extension =
        () -> kit.service.desk.extend(Callers.ADMIN, chosen.id, model.at(to), Supposing.NOTHING);
    if (!live) {
      assertThatThrownBy(extension::run).isInstanceOf(StepRefused.class);
      return;
    }
    boolean welcome =
        held.wish.lines().stream()
            .map(line -> model.terms(line.house()))
            .allMatch(house -> model.takesBack(house, to));
    if (to <= model.now || !welcome) {
      assertThatThrownBy(extension::run).isInstanceOf(WishRefused.class);
      return;
    }
    List<TickModel.Piece> moving =
        held.pieces.stream().filter(piece -> piece.occupies && !piece.in).toList();
    boolean taken =
        moving.stream()
            .anyMatch(
                piece ->
                    model.holds.values().stream()
                        .filter(other -> other != held)
                        .flatMap(other -> other.pieces.stream())
                        .anyMatch(
                            other ->
                                other.unit == piece.unit
                                    && other.occupies
                                    && other
                                            .ticks()
                                            .get(
                                                piece.busyFrom,
                                                model.busyTo(piece.unit.model.house(), to))
                                            .cardinality()
                                        > 0));
    if (taken) {
      assertThatThrownBy(extension::run).isInstanceOf(UnitsTaken.class);
      return;
    }
    extension.run();
    held.to = to;
    moving.forEach(
        piece -> piece.busyTo = Math.max(piece.busyTo, model.busyTo(piece.unit.model.house(), to)));
  }

  private void checkOut() {
    any(HoldStep.CHECK_OUT)
        .ifPresent(chosen -> checkOut(chosen, random.nextBoolean() ? "quay" : "mill"));
  }

  private void checkOut(Chosen chosen, String house) {
    TickModel.Held held = chosen.held;
    if (held.wish.lines().stream().noneMatch(line -> line.house().equals(house))) {
      return;
    }
    Runnable collection =
        () -> kit.service.house.checkOut(Callers.publisher(house), chosen.id, Supposing.NOTHING);
    List<TickModel.Piece> theirs =
        held.pieces.stream()
            .filter(piece -> piece.unit.model.house().equals(house) && piece.occupies && !piece.out)
            .filter(piece -> piece.unit.state.equals("available"))
            .toList();
    boolean inOrder =
        (held.state == HoldState.CONFIRMED || held.state == HoldState.OUT) && held.to > model.now;
    if (!inOrder || theirs.isEmpty()) {
      assertThatThrownBy(collection::run).isInstanceOf(StepRefused.class);
      return;
    }
    boolean absent =
        theirs.stream()
            .anyMatch(
                piece ->
                    model.holds.values().stream()
                        .filter(other -> other != held)
                        .flatMap(other -> other.pieces.stream())
                        .filter(other -> other.unit == piece.unit && other.occupies)
                        .anyMatch(
                            other ->
                                other.out && !other.in
                                    || other
                                            .ticks()
                                            .get(Math.min(piece.busyFrom, model.now), piece.busyTo)
                                            .cardinality()
                                        > 0));
    if (absent) {
      assertThatThrownBy(collection::run).isInstanceOf(UnitsTaken.class);
      return;
    }
    collection.run();
    theirs.forEach(
        piece -> {
          piece.out = true;
          piece.busyFrom = Math.min(piece.busyFrom, model.now);
        });
    held.state = HoldState.OUT;
  }

  private void checkIn() {
    any(HoldStep.CHECK_IN)
        .ifPresent(chosen -> checkIn(chosen, random.nextBoolean() ? "quay" : "mill"));
  }

  private void checkIn(Chosen chosen, String house) {
    TickModel.Held held = chosen.held;
    if (held.wish.lines().stream().noneMatch(line -> line.house().equals(house))) {
      return;
    }
    List<TickModel.Piece> theirs =
        held.pieces.stream()
            .filter(piece -> piece.unit.model.house().equals(house) && piece.out && !piece.in)
            .toList();
    boolean isOver = held.to <= model.now;
    boolean leftOver =
        held.pieces.stream()
            .anyMatch(
                piece -> piece.unit.model.house().equals(house) && piece.occupies && !piece.out);
    if (held.state != HoldState.OUT || theirs.isEmpty() && !(isOver && leftOver)) {
      assertThatThrownBy(
              () ->
                  kit.service.house.checkIn(
                      Callers.publisher(house), chosen.id, Set.of(), Supposing.NOTHING))
          .isInstanceOf(StepRefused.class);
      return;
    }
    CheckedIn in =
        kit.service.house.checkIn(Callers.publisher(house), chosen.id, Set.of(), Supposing.NOTHING);
    int ready = model.now + (int) model.terms(house).turnRound().dividedBy(TickModel.TICK);
    List<String> hit = new ArrayList<>();
    for (TickModel.Piece piece : theirs) {
      int next = ready;
      for (TickModel.Held other : model.holds.values()) {
        for (TickModel.Piece theirPiece : other.pieces) {
          if (other != held
              && theirPiece.unit == piece.unit
              && theirPiece.occupies
              && theirPiece.busyFrom >= piece.busyTo
              && theirPiece.busyFrom < ready) {
            next = Math.min(next, theirPiece.busyFrom);
            hit.add(other.wish.reference() + " " + piece.unit.serial);
          }
        }
      }
      piece.in = true;
      piece.busyTo = next;
    }
    assertThat(in.hits())
        .extracting(one -> one.reference() + " " + one.conflict().serial())
        .containsExactlyInAnyOrderElementsOf(hit);
    held.letGo(piece -> piece.unit.model.house().equals(house));
    if (isOver && held.pieces.stream().noneMatch(piece -> piece.out && !piece.in)) {
      held.letGo(piece -> true);
    }
    held.settle();
  }

  /**
   * A unit breaks or is retired where nobody holds it, is lent again, or joins or leaves a group;
   * its house publishes its kit.
   */
  private void changeUnit() {
    List<TickModel.Unit> all = List.copyOf(model.units.values());
    TickModel.Unit unit = all.get(random.nextInt(all.size()));
    if (random.nextBoolean() && unit.model.microphone().equals("core/a")) {
      unit.group = List.of("", "pair", "trio").get(random.nextInt(3));
    } else if (!unit.state.equals("available") && random.nextBoolean()) {
      unit.state = "available";
    } else {
      boolean retires = !model.isPromised(unit) && random.nextInt(3) == 0;
      unit.state = retires ? "retired" : "in-repair";
    }
    model.dissolveGroupsOfOne();
    publish(unit.model.house());
  }

  private void publish(String house) {
    kit.service.wholeKit.publish(
        Callers.publisher(house),
        house,
        model.units.values().stream()
            .filter(unit -> unit.model.house().equals(house))
            .map(TickModel.Unit::told)
            .toList(),
        false,
        Supposing.NOTHING);
  }

  /** Moves up in the model who moved up in the service, in the order of the line. */
  private void settleAndCompare() {
    // any question lets fall what is due
    Map<UUID, Hold> held = new HashMap<>();
    kit.service
        .holds
        .list(
            Callers.ADMIN,
            new HoldSearch(
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty()),
            Optional.empty(),
            1000)
        .forEach(hold -> held.put(hold.id(), hold));
    assertThat(held.keySet()).isEqualTo(model.holds.keySet());
    model.holds.entrySet().stream()
        .filter(entry -> entry.getValue().state == HoldState.WAITING)
        .sorted(
            Comparator.<Map.Entry<UUID, TickModel.Held>>comparingInt(
                    entry -> entry.getValue().madeAt)
                .thenComparing(entry -> entry.getKey().toString()))
        .forEach(entry -> moveUp(entry.getValue(), held.get(entry.getKey())));
    model.holds.forEach((id, expected) -> compare(expected, held.get(id)));
  }

  private void moveUp(TickModel.Held waiting, Hold found) {
    boolean possible = model.isPossible(waiting.wish.lines(), waiting.from, waiting.to);
    assertThat(found.state())
        .as("%s when the model says %s", waiting.wish, possible)
        .isEqualTo(possible ? HoldState.TENTATIVE : HoldState.WAITING);
    if (possible) {
      model.take(waiting, found);
      waiting.state = HoldState.TENTATIVE;
      waiting.expiresAt = model.now + (int) waiting.wish.lifetime().dividedBy(TickModel.TICK);
    }
  }

  private void compare(TickModel.Held expected, Hold found) {
    assertThat(found.state()).as("%s", expected.wish).isEqualTo(expected.state);
    assertThat(found.period()).isEqualTo(model.period(expected.from, expected.to));
    boolean falls = found.state() == HoldState.WAITING || found.state() == HoldState.TENTATIVE;
    assertThat(found.expiresAt())
        .isEqualTo(falls ? Optional.of(model.at(expected.expiresAt)) : Optional.<Instant>empty());
    Map<String, HeldUnit> units = new HashMap<>();
    found.units().forEach(unit -> units.put(unit.serial(), unit));
    assertThat(units).hasSameSizeAs(expected.pieces);
    for (TickModel.Piece piece : expected.pieces) {
      HeldUnit unit = units.get(piece.unit.serial);
      assertThat(unit.busy().from()).isEqualTo(model.at(piece.busyFrom));
      if (piece.busyTo > piece.busyFrom) {
        assertThat(unit.busy().to()).isEqualTo(model.at(piece.busyTo));
      }
      assertThat(unit.outAt().isPresent()).isEqualTo(piece.out);
      assertThat(unit.inAt().isPresent()).isEqualTo(piece.in);
    }
  }

  /** For each model and some periods: as many as the model counts, and not one more. */
  private void compareCounts() {
    for (HouseTerms house : model.houses.values()) {
      for (String microphone : List.of("core/a", "core/b")) {
        for (int i = 0; i < 2; i++) {
          int from = model.nextOpening(house, model.now + random.nextInt(HORIZON / 2));
          int to = model.nextOpening(house, from + 1 + random.nextInt(HORIZON / 4));
          WantedLine all = new WantedLine(house.id(), microphone, 9, false);
          int most = model.most(List.of(all), from, to).get(0);
          HoldWish wish =
              new HoldWish(
                  "count", model.period(from, to), List.of(all), Duration.ofHours(1), false);
          Shortage shortage =
              catchThrowableOfType(
                  Shortage.class, () -> kit.service.holds.rehearse(Callers.ADMIN, wish));
          assertThat(shortage.shortfalls()).extracting(Shortfall::freeCount).containsExactly(most);
        }
      }
    }
  }
}
