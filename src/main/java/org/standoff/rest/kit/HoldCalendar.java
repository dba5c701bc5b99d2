package org.standoff.rest.kit;

import java.util.stream.Collectors;
import org.standoff.kit.hold.HeldLine;
import org.standoff.kit.hold.HeldUnit;
import org.standoff.kit.hold.Hold;
import org.standoff.kit.hold.HoldState;
import org.standoff.rest.media.CalendarText;

/** A hold as an event in a diary of any program (RFC 5545). */
final class HoldCalendar {

  private HoldCalendar() {}

  static String text(Hold hold) {
    CalendarText text = new CalendarText();
    text.begin("VCALENDAR");
    text.plain("VERSION", "2.0");
    text.plain("PRODID", "-//Standoff//Holds//EN");
    text.begin("VEVENT");
    text.plain("UID", hold.id().toString());
    text.moment("DTSTAMP", hold.changedAt());
    text.moment("CREATED", hold.madeAt());
    text.moment("LAST-MODIFIED", hold.changedAt());
    text.plain("SEQUENCE", String.valueOf(hold.revision() - 1));
    text.moment("DTSTART", hold.period().from());
    text.moment("DTEND", hold.period().to());
    text.text("SUMMARY", hold.reference() + " (" + hold.state().spelt() + ")");
    text.text("LOCATION", houses(hold));
    text.text("DESCRIPTION", description(hold));
    text.plain("STATUS", status(hold.state()));
    text.plain("TRANSP", isBusy(hold.state()) ? "OPAQUE" : "TRANSPARENT");
    text.end("VEVENT");
    text.end("VCALENDAR");
    return text.toString();
  }

  private static String houses(Hold hold) {
    return hold.lines().stream()
        .map(line -> line.wanted().house())
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private static String description(Hold hold) {
    String lines = hold.lines().stream().map(HoldCalendar::line).collect(Collectors.joining("\n"));
    return hold.expiresAt().map(due -> lines + "\nFalls unless confirmed: " + due).orElse(lines);
  }

  private static String line(HeldLine line) {
    String units = line.units().stream().map(HeldUnit::serial).collect(Collectors.joining(", "));
    return "%d x %s from %s%s"
        .formatted(
            line.wanted().quantity(),
            line.wanted().microphone(),
            line.wanted().house(),
            units.isEmpty() ? "" : ": " + units);
  }

  private static String status(HoldState state) {
    return switch (state) {
      case WAITING, TENTATIVE -> "TENTATIVE";
      case CONFIRMED, OUT, RETURNED -> "CONFIRMED";
      case RELEASED, EXPIRED -> "CANCELLED";
    };
  }

  private static boolean isBusy(HoldState state) {
    return switch (state) {
      case TENTATIVE, CONFIRMED, OUT, RETURNED -> true;
      case WAITING, RELEASED, EXPIRED -> false;
    };
  }
}
