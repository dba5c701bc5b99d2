package org.standoff.rest.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.kit.Period;
import org.standoff.kit.hold.HeldLine;
import org.standoff.kit.hold.HeldUnit;
import org.standoff.kit.hold.Hold;
import org.standoff.kit.hold.HoldState;
import org.standoff.kit.hold.WantedLine;

class HoldCalendarTest {

  private static final Period PERIOD =
      new Period(Instant.parse("2027-06-11T08:00:00Z"), Instant.parse("2027-06-14T09:00:00Z"));

  private static Hold hold(HoldState state) {
    return new Hold(
        UUID.fromString("01978d1e-6f00-7a11-8c01-5f0c3b9d2a01"),
        "saltlight-desk",
        "saltlight; June",
        PERIOD,
        state,
        state == HoldState.TENTATIVE
            ? Optional.of(Instant.parse("2027-05-03T10:00:00Z"))
            : Optional.empty(),
        Instant.parse("2027-05-01T10:00:00Z"),
        Instant.parse("2027-05-02T10:00:00Z"),
        3,
        List.of(
            new HeldLine(
                0,
                new WantedLine("ostrel-hire", "boathouse/sdc-omni-1", 2, true),
                List.of(unit("OH-0103"), unit("OH-0104")))));
  }

  private static HeldUnit unit(String serial) {
    return new HeldUnit(
        serial,
        Optional.of("omni-1"),
        1400,
        Optional.empty(),
        Optional.empty(),
        true,
        PERIOD.to(),
        PERIOD,
        Optional.empty(),
        Optional.empty());
  }

  @Test
  void aHoldIsAnEventOfADiary() {
    assertThat(HoldCalendar.text(hold(HoldState.TENTATIVE)).replace("\r\n ", "").split("\r\n"))
        .containsExactly(
            "BEGIN:VCALENDAR",
            "VERSION:2.0",
            "PRODID:-//Standoff//Holds//EN",
            "BEGIN:VEVENT",
            "UID:01978d1e-6f00-7a11-8c01-5f0c3b9d2a01",
            "DTSTAMP:20270502T100000Z",
            "CREATED:20270501T100000Z",
            "LAST-MODIFIED:20270502T100000Z",
            "SEQUENCE:2",
            "DTSTART:20270611T080000Z",
            "DTEND:20270614T090000Z",
            "SUMMARY:saltlight\\; June (tentative)",
            "LOCATION:ostrel-hire",
            "DESCRIPTION:2 x boathouse/sdc-omni-1 from ostrel-hire: OH-0103\\, OH-0104"
                + "\\nFalls unless confirmed: 2027-05-03T10:00:00Z",
            "STATUS:TENTATIVE",
            "TRANSP:OPAQUE",
            "END:VEVENT",
            "END:VCALENDAR");
  }

  @ParameterizedTest
  @CsvSource({
    "WAITING, TENTATIVE, TRANSPARENT",
    "TENTATIVE, TENTATIVE, OPAQUE",
    "CONFIRMED, CONFIRMED, OPAQUE",
    "OUT, CONFIRMED, OPAQUE",
    "RETURNED, CONFIRMED, OPAQUE",
    "RELEASED, CANCELLED, TRANSPARENT",
    "EXPIRED, CANCELLED, TRANSPARENT"
  })
  void aDiaryShowsHowItStands(HoldState state, String status, String transparency) {
    assertThat(HoldCalendar.text(hold(state)).split("\r\n"))
        .contains("STATUS:" + status, "TRANSP:" + transparency);
  }
}
