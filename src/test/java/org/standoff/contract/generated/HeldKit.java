package org.standoff.contract.generated;

import java.util.UUID;
import org.standoff.fixture.Kit;

/** A house, open at all times, whose units are held in the period of the examples. */
final class HeldKit {
  private static final String FROM = "2027-06-11T08:00:00Z";
  private static final String TO = "2027-06-14T09:00:00Z";

  private final Kit kit = Kit.house();
  private final String house = kit.id();

  String house() {
    return house;
  }

  /** What the examples of holds want, and nobody has. */
  void wanted() {
    kit.matchedPair("boathouse/sdc-omni-1");
    kit.units("boathouse/ldc-multi-1", 1);
    kit.units("boathouse/rib-8-1", 2);
  }

  /**
   * @return the serial number
   */
  String unit(String serial, String microphone) {
    unit(house, serial, microphone);
    return serial;
  }

  static void unit(String house, String serial, String microphone) {
    Kit.sql(
        "insert into unit (house, serial, microphone, state, day_rate_minor)"
            + " values (?, ?, ?, 'available', 1000)",
        house,
        serial,
        microphone);
  }

  /**
   * A hold of one unit.
   *
   * @return its id
   */
  String hold(String state, String serial) {
    String id = UUID.randomUUID().toString();
    Kit.sql(
        "insert into hold (id, desk, reference, held_from, held_to, state, expires_at)"
            + " values (?::uuid, 'admin', ?, ?::timestamptz, ?::timestamptz, ?,"
            + " case ? when 'tentative' then now() + interval '2 days' end)",
        id,
        id,
        FROM,
        TO,
        state,
        state);
    Kit.sql(
        "insert into hold_line (hold, line, house, microphone, quantity, matched)"
            + " select ?::uuid, 0, house, microphone, 1, false from unit"
            + " where house = ? and serial = ?",
        id,
        house,
        serial);
    Kit.sql(
        "insert into hold_unit (hold, line, unit, house, microphone, day_rate_minor, busy, out_at)"
            + " select ?::uuid, 0, id, house, microphone, day_rate_minor,"
            + " tstzrange(least(?::timestamptz, case ? when 'out' then now() end), ?::timestamptz),"
            + " case ? when 'out' then now() end from unit where house = ? and serial = ?",
        id,
        FROM,
        state,
        TO,
        state,
        house,
        serial);
    return id;
  }
}
