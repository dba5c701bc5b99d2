package org.standoff.contract;

import org.standoff.fixture.Kit;

/** The holds of the description's examples, as they are before a step is taken with them. */
final class HeldExamples {

  private static final String HOUSE = "ostrel-hire";
  private static final String FROM = "2027-06-11T08:00:00Z";
  private static final String TO = "2027-06-14T09:00:00Z";
  private static final String READY = "2027-06-14T13:00:00Z";

  private HeldExamples() {}

  /** Puts them back to where they were, and takes away what examples have made. */
  static void stand() {
    String ofTheExamples = " in (select id from hold where desk in ('admin', 'saltlight-desk'))";
    Kit.sql("delete from idempotency_key where hold" + ofTheExamples);
    Kit.sql("delete from hold_unit where hold" + ofTheExamples);
    Kit.sql("delete from hold_line where hold" + ofTheExamples);
    Kit.sql("delete from hold where desk in ('admin', 'saltlight-desk')");
    hold("01978d1e-6f00-7a11-8c01-5f0c3b9d2a01", "tentative", "sdc-card-1", "sdc-card-1-1");
    hold("01978d1e-6f00-7a11-8c02-5f0c3b9d2a02", "confirmed", "sdc-card-1", "sdc-card-1-2");
    hold(
        "01978d1e-6f00-7a11-8c03-5f0c3b9d2a03",
        "out",
        "clip-sup-1",
        "clip-sup-1-3",
        "clip-sup-1-4");
  }

  private static void hold(String id, String state, String microphone, String... serials) {
    Kit.sql(
        "insert into hold (id, desk, reference, held_from, held_to, state, expires_at)"
            + " values (?::uuid, 'saltlight-desk', ?, ?::timestamptz, ?::timestamptz, ?,"
            + " case ? when 'tentative' then now() + interval '2 days' end)",
        id,
        "saltlight-2027-06-" + state,
        FROM,
        TO,
        state,
        state);
    Kit.sql(
        "insert into hold_line (hold, line, house, microphone, quantity, matched)"
            + " values (?::uuid, 0, ?, ?, ?, false)",
        id,
        HOUSE,
        "boathouse/" + microphone,
        serials.length);
    for (String serial : serials) {
      Kit.sql(
          "insert into hold_unit (hold, line, unit, house, microphone, day_rate_minor, busy, out_at)"
              + " select ?::uuid, 0, id, house, microphone, day_rate_minor,"
              + " tstzrange(least(?::timestamptz, case ? when 'out' then now() end), ?::timestamptz),"
              + " case ? when 'out' then now() end from unit where house = ? and serial = ?",
          id,
          FROM,
          state,
          READY,
          state,
          HOUSE,
          serial);
    }
  }
}
