package org.standoff.rest.kit;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.standoff.catalogue.NearMiss;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.OpeningHours;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.problem.ProblemType;

/** Makes terms of what a house tells, or says everything in it that means nothing. */
final class HouseReader {

  private static final BigDecimal TWO = BigDecimal.valueOf(2);

  /** Names of regions alone; a fixed offset knows no summer. */
  private static final Set<String> ZONES = ZoneId.getAvailableZoneIds();

  private final List<Fault> faults = new ArrayList<>();

  private HouseReader() {}

  static HouseTerms read(String id, HouseTold told) {
    return new HouseReader().terms(id, told);
  }

  private HouseTerms terms(String id, HouseTold told) {
    if (!ZONES.contains(told.zone())) {
      faults.add(
          unknown("/zone", "No time zone has this name.", told.zone(), "an IANA name")
              .suggestion(NearMiss.of(told.zone(), ZONES).orElse(null)));
    }
    if (!currencies().contains(told.currency())) {
      faults.add(
          unknown("/currency", "No currency has this code.", told.currency(), "an ISO 4217 code"));
    }
    OpeningHours hours = hours(told.hours() == null ? List.of() : told.hours());
    if (!faults.isEmpty()) {
      throw new InvalidRequest(ProblemType.RULE_BROKEN, faults);
    }
    return new HouseTerms(
        id,
        told.title(),
        ZoneId.of(told.zone()),
        Currency.getInstance(told.currency()),
        hours,
        Duration.ofMinutes(Objects.requireNonNullElse(told.turnRoundMin(), 0)),
        Boolean.TRUE.equals(told.dropBox()),
        Objects.requireNonNullElse(told.weekendDays(), TWO),
        Objects.requireNonNullElse(told.minimumChargeMinor(), 0L),
        0);
  }

  private OpeningHours hours(List<OpenSpan> told) {
    List<OpeningHours.Span> spans = new ArrayList<>();
    for (int i = 0; i < told.size(); i++) {
      int at = i;
      OpenSpan span = told.get(i);
      LocalTime opens = LocalTime.parse(span.opens());
      LocalTime closes = OpeningHours.closingTime(span.closes());
      boolean untilMidnight = closes.equals(LocalTime.MIDNIGHT) && !span.closes().startsWith("00");
      if (!untilMidnight && !opens.isBefore(closes)) {
        faults.add(
            contradiction(i, "closes", "A house closes after it opens, on the same day.")
                .found(span.closes())
                .allowed("after " + span.opens() + "; midnight is 24:00"));
      } else {
        spans.add(new OpeningHours.Span(span.day(), opens, closes));
        overlap(spans)
            .ifPresent(
                other ->
                    faults.add(
                        contradiction(at, "opens", "Two stretches overlap.")
                            .found(spans.get(spans.size() - 1).toString())
                            .allowed("a stretch beside " + other)));
      }
    }
    return new OpeningHours(spans);
  }

  private static Optional<OpeningHours.Span> overlap(List<OpeningHours.Span> spans) {
    OpeningHours.Span last = spans.get(spans.size() - 1);
    return spans.stream()
        .limit(spans.size() - 1L)
        .filter(other -> other.day() == last.day())
        .filter(
            other ->
                isBefore(other.opens(), last.closes()) && isBefore(last.opens(), other.closes()))
        .findFirst();
  }

  private static boolean isBefore(LocalTime opens, LocalTime closes) {
    return closes.equals(LocalTime.MIDNIGHT) || opens.isBefore(closes);
  }

  private static Set<String> currencies() {
    return Currency.getAvailableCurrencies().stream()
        .map(Currency::getCurrencyCode)
        .collect(Collectors.toSet());
  }

  private static Fault unknown(
      String pointer, String detail, @Nullable String found, String allowed) {
    return Fault.atPointer(pointer, FaultCode.UNKNOWN_VALUE, detail).found(found).allowed(allowed);
  }

  private static Fault contradiction(int span, String member, String detail) {
    return Fault.atPointer("/hours/" + span + "/" + member, FaultCode.CONTRADICTION, detail);
  }
}
