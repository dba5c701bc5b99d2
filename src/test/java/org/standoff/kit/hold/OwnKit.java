package org.standoff.kit.hold;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.IntStream;
import org.standoff.fixture.Holding;
import org.standoff.fixture.OwnDatabase;
import org.standoff.fixture.Supposing;
import org.standoff.kit.Caller;
import org.standoff.kit.Model;
import org.standoff.kit.Period;
import org.standoff.kit.house.FixedHouses;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.OpeningHours;

/** Houses, units and one instance of the service on a database of their own. */
public final class OwnKit implements AutoCloseable {

  /** Where the clock stands at first: a Tuesday. */
  public static final Instant NOON = Instant.parse("2026-12-01T12:00:00Z");

  public final OwnDatabase database = OwnDatabase.make();
  public final FixedHouses houses = new FixedHouses();
  public final Instance service = new Instance(database.pool(6), houses);

  private int serials;

  public OwnKit() {
    database.clockAt(NOON);
  }

  /** Open at all times, in Europe/Vienna. */
  public String house(String id, Duration turnRound) {
    return house(id, "Europe/Vienna", OpeningHours.ALWAYS, turnRound, false);
  }

  public String house(
      String id, String zone, OpeningHours hours, Duration turnRound, boolean dropBox) {
    houses.put(
        new HouseTerms(
            id,
            "House " + id,
            ZoneId.of(zone),
            Currency.getInstance("EUR"),
            hours,
            turnRound,
            dropBox,
            BigDecimal.valueOf(2),
            0,
            1));
    database.change(
        "insert into house (id, title, zone, hours, turn_round_min, drop_box) values (?, ?, ?, ?, ?, ?)",
        id,
        "House " + id,
        zone,
        hours.toString(),
        (int) turnRound.toMinutes(),
        dropBox);
    return id;
  }

  /** Units without a group; their serials. */
  public List<String> units(String house, String microphone, int quantity) {
    return units(house, microphone, quantity, Optional.empty());
  }

  public List<String> units(
      String house, String microphone, int quantity, Optional<String> matchedGroup) {
    return IntStream.range(0, quantity)
        .mapToObj(
            any -> {
              String serial = "S" + ++serials;
              database.change(
                  "insert into unit (house, serial, microphone, matched_group, state, day_rate_minor)"
                      + " values (?, ?, ?, ?, 'available', 1000)",
                  house,
                  serial,
                  microphone,
                  matchedGroup);
              return serial;
            })
        .toList();
  }

  /** A model whose units changed behind the service's back; those who wait for it are looked at. */
  public void freed(Model model) {
    service.transactions.statements(
        connection -> {
          service.secondHolds.moveUp(connection, List.of(model));
          return true;
        });
  }

  /** Moves the clock to so long after noon. */
  public void clockAt(Duration afterNoon) {
    database.clockAt(NOON.plus(afterNoon));
  }

  /** So many hours after noon. */
  public static Instant at(double hours) {
    return NOON.plusSeconds(Math.round(hours * Duration.ofHours(1).toSeconds()));
  }

  public static Period period(double fromHours, double toHours) {
    return new Period(at(fromHours), at(toHours));
  }

  public static WantedLine line(String house, String microphone, int quantity) {
    return new WantedLine(house, microphone, quantity, false);
  }

  public static WantedLine matched(String house, String microphone, int quantity) {
    return new WantedLine(house, microphone, quantity, true);
  }

  /** A wish that stands for two hours and does not wait. */
  public static HoldWish wish(String reference, Period period, WantedLine... lines) {
    return new HoldWish(reference, period, List.of(lines), Duration.ofHours(2), false);
  }

  /** The same that waits where units are short. */
  public static HoldWish second(String reference, Period period, WantedLine... lines) {
    return new HoldWish(reference, period, List.of(lines), Duration.ofHours(2), true);
  }

  public Hold hold(Caller caller, HoldWish wish) {
    return Holding.once(service.holds, caller, wish);
  }

  /** Held and confirmed. */
  public Hold confirmed(Caller caller, HoldWish wish) {
    return service.desk.confirm(caller, hold(caller, wish).id(), Supposing.NOTHING);
  }

  /** Held, confirmed and handed over. */
  public Hold out(Caller caller, HoldWish wish) {
    return service.house.checkOut(Callers.ADMIN, confirmed(caller, wish).id(), Supposing.NOTHING);
  }

  public HoldState state(Hold hold) {
    return find(hold.id()).state();
  }

  public Hold find(UUID id) {
    return service.holds.find(Callers.ADMIN, id);
  }

  @Override
  public void close() {
    database.close();
  }
}
