package org.standoff.rest.kit;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.standoff.kit.Period;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.problem.ProblemType;

/** Reads moments and periods that callers name: within the years that kit is lent in. */
final class AskedTimes {

  private static final Instant EARLIEST = Instant.parse("2000-01-01T00:00:00Z");
  private static final Instant LATEST = Instant.parse("2200-01-01T00:00:00Z");

  private AskedTimes() {}

  /** A moment of a body. */
  static Instant moment(Instant asked, String pointer) {
    refuse(outside(asked, pointer).stream().toList());
    return exact(asked);
  }

  /** The period between {@code /from} and {@code /to} of a body. */
  static Period period(Instant from, Instant to) {
    List<Fault> faults = new ArrayList<>();
    outside(from, "/from").ifPresent(faults::add);
    outside(to, "/to").ifPresent(faults::add);
    if (faults.isEmpty() && !exact(from).isBefore(exact(to))) {
      faults.add(
          Fault.atPointer("/to", FaultCode.CONTRADICTION, "A period ends after it begins.")
              .found(to)
              .allowed("later than " + from));
    }
    refuse(faults);
    return new Period(exact(from), exact(to));
  }

  /** The period between the parameters {@code from} and {@code to} of a query. */
  static Period periodOfQuery(Instant from, Instant to) {
    try {
      return period(from, to);
    } catch (InvalidRequest invalid) {
      throw new InvalidRequest(
          invalid.type(), invalid.faults().stream().map(AskedTimes::asParameter).toList());
    }
  }

  private static Fault asParameter(Fault fault) {
    return fault.asParameter(fault.pointer().substring(1));
  }

  /** The database tells microseconds apart, and nothing finer. */
  static Instant exact(Instant moment) {
    return moment.truncatedTo(ChronoUnit.MICROS);
  }

  /** What is wrong with a parameter of a query that names a moment. */
  static Optional<Fault> outsideInQuery(Instant moment, String parameter) {
    return outside(moment, "/" + parameter).map(AskedTimes::asParameter);
  }

  private static Optional<Fault> outside(Instant moment, String pointer) {
    return moment.isBefore(EARLIEST) || !moment.isBefore(LATEST)
        ? Optional.of(
            Fault.atPointer(pointer, FaultCode.OUT_OF_RANGE, "Nobody lends in that year.")
                .found(moment)
                .allowed("from " + EARLIEST + " to " + LATEST))
        : Optional.empty();
  }

  private static void refuse(List<Fault> faults) {
    if (!faults.isEmpty()) {
      throw new InvalidRequest(ProblemType.RULE_BROKEN, faults);
    }
  }
}
