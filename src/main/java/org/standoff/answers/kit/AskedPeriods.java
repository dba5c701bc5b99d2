package org.standoff.answers.kit;

import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.kit.Period;

/** Reads periods of questions: not empty, not endless, within the years that kit is lent in. */
public final class AskedPeriods {
  private static final Instant EARLIEST = Instant.parse("2000-01-01T00:00:00Z");
  private static final Instant LATEST = Instant.parse("2200-01-01T00:00:00Z");
  private static final Duration LONGEST = Duration.ofDays(366);

  private AskedPeriods() {}

  /**
   * The period; empty, and a fault, where there is none.
   *
   * @param within the object in which {@code from} and {@code to} stand, as a pointer
   */
  public static Optional<Period> resolve(
      References references, Instant from, Instant to, String within) {
    boolean sound =
        inYears(references, from, within + "/from") & inYears(references, to, within + "/to");
    if (!sound) {
      return Optional.empty();
    }
    // the database tells microseconds apart, and nothing finer
    Instant begin = from.truncatedTo(ChronoUnit.MICROS);
    Instant end = to.truncatedTo(ChronoUnit.MICROS);
    if (!begin.isBefore(end)) {
      references.fault(
          QuestionFault.of(
                  within + "/to",
                  QuestionFault.Kind.CONTRADICTION,
                  "A period ends after it begins.")
              .found(to)
              .allowed("later than " + from));
      return Optional.empty();
    }
    if (Duration.between(begin, end).compareTo(LONGEST) > 0) {
      references.fault(
          QuestionFault.of(
                  within + "/to", QuestionFault.Kind.OUT_OF_RANGE, "The period is too long.")
              .found(to)
              .allowed("at most " + LONGEST.toDays() + " days after from"));
      return Optional.empty();
    }
    return Optional.of(new Period(begin, end));
  }

  private static boolean inYears(References references, Instant moment, String pointer) {
    if (!moment.isBefore(EARLIEST) && moment.isBefore(LATEST)) {
      return true;
    }
    references.fault(
        QuestionFault.of(pointer, QuestionFault.Kind.OUT_OF_RANGE, "Nobody lends in that year.")
            .found(moment)
            .allowed("from " + EARLIEST + " to " + LATEST));
    return false;
  }
}
