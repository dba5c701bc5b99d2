package org.standoff.rest.problem;

import io.quarkus.security.AuthenticationFailedException;
import io.quarkus.security.ForbiddenException;
import io.quarkus.security.UnauthorizedException;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.WebApplicationException;
import jakarta.ws.rs.core.HttpHeaders;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standoff.answers.TooCostly;
import org.standoff.kit.DatabaseLost;
import org.standoff.kit.NotPermitted;
import org.standoff.kit.StatementFailed;
import org.standoff.kit.house.CurrencyInUse;
import org.standoff.kit.house.UnknownHouse;
import org.standoff.kit.pack.PackClash;
import org.standoff.kit.pack.UnknownPack;
import org.standoff.kit.stock.UnitsUnderHold;
import org.standoff.kit.stock.UnknownUnit;

/**
 * Which exception means which problem. A class that is not listed takes the row of its nearest
 * listed superclass, so that a new subclass never turns into a fault of ours.
 */
final class ExceptionTable {

  /** What the caller is told about one exception, with what members and headers besides. */
  record Told(
      ProblemType type,
      String detail,
      List<Fault> faults,
      Map<String, String> headers,
      ToldMembers members,
      @Nullable Object inTheWay) {

    static Told of(ProblemType type, String detail) {
      return of(type, detail, List.of());
    }

    static Told of(ProblemType type, String detail, List<Fault> faults) {
      return new Told(type, detail, faults, Map.of(), ToldMembers.NONE, null);
    }

    static Told unavailable(String detail) {
      return of(ProblemType.UNAVAILABLE, detail).with(RetryAfter.SOMETHING_IS_MENDED.told());
    }

    Told header(String name, String value) {
      Map<String, String> more = new LinkedHashMap<>(headers);
      more.put(name, value);
      return new Told(type, detail, faults, more, members, inTheWay);
    }

    Told with(ToldMembers more) {
      return new Told(type, detail, faults, headers, more, inTheWay);
    }
  }

  /** PostgreSQL, appendix A: serialization failure, deadlock, lock not available. */
  private static final Set<String> FOR_ANOTHERS_SAKE = Set.of("40001", "40P01", "55P03");

  /** PostgreSQL, appendix A: a character that it has no place for, plain or in JSON. */
  private static final Set<String> NO_TEXT = Set.of("22021", "22P05");

  private static final Map<Class<?>, Function<Throwable, Told>> ROWS = new LinkedHashMap<>();

  static {
    row(InvalidRequest.class, e -> Told.of(e.type(), e.getMessage(), e.faults()).with(e.members()));
    row(TooCostly.class, e -> Told.of(ProblemType.TOO_COSTLY, e.getMessage()));
    row(BodyTooSlow.class, e -> Told.of(ProblemType.TOO_SLOW, e.getMessage()).with(e.members()));
    row(BodyTooLarge.class, e -> Told.of(ProblemType.TOO_LARGE, e.getMessage()).with(e.members()));
    row(PreconditionWanted.class, e -> Told.of(ProblemType.PRECONDITION_WANTED, e.getMessage()));
    row(Clash.class, ExceptionTable::clash);
    row(Stale.class, ExceptionTable::stale);
    row(NotPermitted.class, e -> forbidden(e.getMessage()));
    row(ForbiddenException.class, e -> forbidden(ProblemType.FORBIDDEN.meaning()));
    row(
        UnauthorizedException.class,
        e -> unauthenticated("No token was sent, and this needs one.", BearerChallenge.plain()));
    row(AuthenticationFailedException.class, ExceptionTable::refusedToken);
    row(UnusableToken.class, e -> invalidToken(e.getMessage()).with(e.members()));
    row(UnknownHouse.class, ExceptionTable::unknownHouse);
    row(UnknownUnit.class, e -> unknown("serial", e.getMessage(), e.serial(), null));
    row(UnknownPack.class, e -> unknown("pack", e.getMessage(), e.pack(), null));
    row(UnitsUnderHold.class, ExceptionTable::underHold);
    row(PackClash.class, ExceptionTable::packClash);
    row(CurrencyInUse.class, ExceptionTable::currencyInUse);
    row(DatabaseLost.class, e -> Told.unavailable(e.getMessage()));
    row(StatementFailed.class, ExceptionTable::statementFailed);
    row(NotFoundException.class, ExceptionTable::notFound);
    row(
        WebApplicationException.class,
        e -> {
          ProblemType type = ProblemType.ofStatus(e.getResponse().getStatus());
          return byItself(type);
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

  /** What a kind of problem tells where nothing more is known. */
  static Told byItself(ProblemType type) {
    return type == ProblemType.UNAVAILABLE
        ? Told.unavailable(type.meaning())
        : Told.of(type, type.meaning());
  }

  private static <E extends Throwable> void row(Class<E> cause, Function<E, Told> told) {
    ROWS.put(cause, exception -> told.apply(cause.cast(exception)));
  }

  private static Told clash(Clash clash) {
    return new Told(
        ProblemType.CLASH,
        clash.getMessage(),
        List.of(),
        Map.of(),
        clash.members(),
        clash.inTheWay().orElse(null));
  }

  private static Told stale(Stale stale) {
    Told told = Told.of(ProblemType.STALE, stale.getMessage()).with(stale.members());
    return stale.currentTag().map(tag -> told.header(HttpHeaders.ETAG, tag)).orElse(told);
  }

  private static Told forbidden(String detail) {
    return Told.of(ProblemType.FORBIDDEN, detail)
        .header(HttpHeaders.WWW_AUTHENTICATE, BearerChallenge.insufficientScope());
  }

  private static Told unauthenticated(String detail, String challenge) {
    return Told.of(ProblemType.UNAUTHENTICATED, detail)
        .header(HttpHeaders.WWW_AUTHENTICATE, challenge);
  }

  /** What PostgreSQL gave up for another's sake changed nothing, and may go through next time. */
  private static Told statementFailed(StatementFailed failed) {
    if (NO_TEXT.contains(failed.state())) {
      return Told.of(
          ProblemType.INVALID_REQUEST, "A text has a character that no stored text can have.");
    }
    return FOR_ANOTHERS_SAKE.contains(failed.state())
        ? Told.unavailable("Others changed the same at this moment: try again.")
        : Told.of(ProblemType.INTERNAL, ProblemType.INTERNAL.meaning());
  }

  private static Told refusedToken(AuthenticationFailedException failed) {
    return TokenRefusal.isForLackOfKeys(failed)
        ? Told.unavailable("The keys that tokens are checked with can't be had now.")
        : invalidToken(TokenRefusal.reason(failed));
  }

  private static Told invalidToken(String reason) {
    return unauthenticated(reason, BearerChallenge.invalidToken(reason));
  }

  private static Told unknownHouse(UnknownHouse unknown) {
    return unknown("house", unknown.getMessage(), unknown.id(), unknown.suggestion().orElse(null));
  }

  private static Told unknown(
      String parameter, String detail, String found, @Nullable String suggestion) {
    return Told.of(
        ProblemType.NOT_FOUND,
        detail,
        List.of(
            Fault.ofParameter(parameter, FaultCode.UNKNOWN_ITEM, detail)
                .found(found)
                .suggestion(suggestion)));
  }

  private static Told underHold(UnitsUnderHold clash) {
    return Told.of(
        ProblemType.CLASH,
        clash.getMessage(),
        clash.promises().stream()
            .map(
                promise ->
                    Fault.ofParameter(
                            "serial",
                            FaultCode.CONTRADICTION,
                            "Unit %s is promised to hold %s until %s."
                                .formatted(promise.serial(), promise.hold(), promise.until()))
                        .with(ProblemMember.HOLD, promise.hold())
                        .with(ProblemMember.UNTIL, promise.until())
                        .found(promise.serial())
                        .allowed("once hold " + promise.hold() + " is over or released"))
            .toList());
  }

  private static Told currencyInUse(CurrencyInUse refused) {
    return Told.of(
        ProblemType.CLASH,
        refused.getMessage(),
        List.of(
            Fault.atPointer("/currency", FaultCode.CONTRADICTION, refused.getMessage())
                .found(refused.wanted().getCurrencyCode())
                .allowed(refused.now().getCurrencyCode())));
  }

  private static Told packClash(PackClash clash) {
    return Told.of(
        ProblemType.CLASH,
        clash.getMessage(),
        clash.inTheWay().stream()
            .map(
                what ->
                    Fault.ofParameter(
                        "pack", FaultCode.CONTRADICTION, "In the way is " + what + "."))
            .toList());
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
