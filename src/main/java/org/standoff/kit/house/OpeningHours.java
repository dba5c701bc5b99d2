package org.standoff.kit.house;

import static java.util.Comparator.comparing;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.zone.ZoneOffsetTransition;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * When a house is open, the same every week, by the clock on its wall. A house that tells no hours
 * is open at all times.
 *
 * <p>In the night when clocks are set: a door that opens at a time which the clock leaves out opens
 * at the jump; a door that opens at a time which comes twice opens at the first; one that closes at
 * a time which comes twice closes at the second, and at the jump where the time is left out.
 *
 * @param spans in the order of the week
 */
public record OpeningHours(List<Span> spans) {

  /** Open at all times. */
  public static final OpeningHours ALWAYS = new OpeningHours(List.of());

  private static final int NAME_LENGTH = 3;
  private static final String END_OF_DAY = "24:00";

  /** A week, one more for hours that fall into a jump of the clock, and a day at either end. */
  private static final int DAYS_LOOKED_AT = 16;

  /**
   * One stretch of one day.
   *
   * @param day of the week
   * @param opens when the door opens
   * @param closes when it closes, after {@code opens}; midnight is the end of the day
   */
  public record Span(DayOfWeek day, LocalTime opens, LocalTime closes) {

    /**
     * @throws IllegalArgumentException where it does not close after it opens
     */
    public Span {
      if (!opens.isBefore(closes) && !closes.equals(LocalTime.MIDNIGHT)) {
        throw new IllegalArgumentException("a house closes after it opens");
      }
    }

    /** Closing time as people write it: the end of the day is 24:00. */
    public String closesText() {
      return closes.equals(LocalTime.MIDNIGHT) ? END_OF_DAY : closes.toString();
    }

    @Override
    public String toString() {
      String name = day.name().substring(0, NAME_LENGTH).toLowerCase(Locale.ROOT);
      return name + " " + opens + "-" + closesText();
    }
  }

  public OpeningHours {
    spans = spans.stream().sorted(comparing(Span::day).thenComparing(Span::opens)).toList();
  }

  /**
   * Reads what {@link #toString()} writes: {@code mon 08:00-17:30, sat 09:00-24:00}.
   *
   * @throws RuntimeException where it is anything else
   */
  public static OpeningHours parse(String text) {
    return text.isEmpty()
        ? ALWAYS
        : new OpeningHours(Arrays.stream(text.split(", ")).map(OpeningHours::span).toList());
  }

  /** Closing time as people write it, where the end of the day is 24:00. */
  public static LocalTime closingTime(String text) {
    return text.equals(END_OF_DAY) ? LocalTime.MIDNIGHT : LocalTime.parse(text);
  }

  /**
   * The first moment from this one on at which the door is open: this one, if it is open now. At
   * the very moment of closing it still is.
   */
  public Instant nextOpening(Instant moment, ZoneId zone) {
    if (spans.isEmpty()) {
      return moment;
    }
    LocalDate yesterday = LocalDate.ofInstant(moment, zone).minusDays(1);
    return Stream.iterate(yesterday, day -> day.plusDays(1))
        .limit(DAYS_LOOKED_AT)
        .flatMap(day -> openOn(day, zone))
        .filter(open -> !open.closes().isBefore(moment))
        .findFirst()
        .map(open -> open.opens().isAfter(moment) ? open.opens() : moment)
        .orElseThrow(() -> new IllegalStateException("no opening in two weeks"));
  }

  private record Open(Instant opens, Instant closes) {}

  private Stream<Open> openOn(LocalDate day, ZoneId zone) {
    return spans.stream()
        .filter(span -> span.day() == day.getDayOfWeek())
        .map(span -> open(span, day, zone))
        .filter(open -> open.opens().isBefore(open.closes()));
  }

  private static Open open(Span span, LocalDate day, ZoneId zone) {
    boolean untilMidnight = span.closes().equals(LocalTime.MIDNIGHT);
    LocalDateTime closes = (untilMidnight ? day.plusDays(1) : day).atTime(span.closes());
    return new Open(first(day.atTime(span.opens()), zone), last(closes, zone));
  }

  private static Instant first(LocalDateTime time, ZoneId zone) {
    return jump(time, zone)
        .map(ZoneOffsetTransition::getInstant)
        .orElseGet(() -> time.atZone(zone).withEarlierOffsetAtOverlap().toInstant());
  }

  private static Instant last(LocalDateTime time, ZoneId zone) {
    return jump(time, zone)
        .map(ZoneOffsetTransition::getInstant)
        .orElseGet(() -> time.atZone(zone).withLaterOffsetAtOverlap().toInstant());
  }

  private static Optional<ZoneOffsetTransition> jump(LocalDateTime time, ZoneId zone) {
    return Optional.ofNullable(zone.getRules().getTransition(time))
        .filter(ZoneOffsetTransition::isGap);
  }

  private static Span span(String text) {
    String[] parts = text.split("[ -]");
    DayOfWeek day =
        Arrays.stream(DayOfWeek.values())
            .filter(known -> known.name().toLowerCase(Locale.ROOT).startsWith(parts[0]))
            .findFirst()
            .orElseThrow(() -> new IllegalArgumentException(text));
    return new Span(day, LocalTime.parse(parts[1]), closingTime(parts[2]));
  }

  @Override
  public String toString() {
    return spans.stream().map(Span::toString).collect(Collectors.joining(", "));
  }
}
