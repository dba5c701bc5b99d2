package org.standoff.rest.problem;

import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.WebApplicationException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Which exception means which problem. A class that is not listed takes the row of its nearest
 * listed superclass, so that a new subclass never turns into a fault of ours.
 */
final class ExceptionTable {

  /** What the caller is told about one exception. */
  record Told(ProblemType type, String detail, List<Fault> faults) {

    static Told of(ProblemType type, String detail) {
      return new Told(type, detail, List.of());
    }
  }

  private static final Map<Class<?>, Function<Throwable, Told>> ROWS = new LinkedHashMap<>();

  static {
    row(InvalidRequest.class, e -> new Told(e.type(), e.getMessage(), e.faults()));
    row(BodyTooLarge.class, e -> Told.of(ProblemType.TOO_LARGE, e.getMessage()));
    row(NotFoundException.class, ExceptionTable::notFound);
    row(
        WebApplicationException.class,
        e -> {
          ProblemType type = ProblemType.ofStatus(e.getResponse().getStatus());
          return Told.of(type, type.meaning());
        });
    row(Throwable.class, e -> Told.of(ProblemType.INTERNAL, ProblemType.INTERNAL.meaning()));
  }

  private ExceptionTable() {}

  static Told tell(Throwable exception) {
    Class<?> cause = exception.getClass();
    while (!ROWS.containsKey(cause)) {
      cause = cause.getSuperclass();
    }
    return ROWS.get(cause).apply(exception);
  }

  private static <E extends Throwable> void row(Class<E> cause, Function<E, Told> told) {
    ROWS.put(cause, exception -> told.apply(cause.cast(exception)));
  }

  /** Jakarta REST calls a parameter that can't be converted 'not found'; the caller needs a 400. */
  private static Told notFound(NotFoundException exception) {
    boolean conversionFailed = exception.getCause() != null;
    return conversionFailed
        ? Told.of(
            ProblemType.INVALID_REQUEST, "A parameter can't be read as the type it should have.")
        : Told.of(ProblemType.NOT_FOUND, ProblemType.NOT_FOUND.meaning());
  }
}
