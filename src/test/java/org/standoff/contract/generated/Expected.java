package org.standoff.contract.generated;

import java.util.Set;
import java.util.function.IntPredicate;

/** Which answers a call may get. */
enum Expected {
  /** An example of the description: it is answered. */
  ANSWERED(Finding.Kind.EXAMPLE_REFUSED, "is answered", status -> status / 100 == 2),
  /** Valid under the schema: it may break a rule, but it is not malformed. */
  UNDERSTOOD(
      Finding.Kind.VALID_REFUSED,
      "is understood",
      status ->
          status / 100 == 2
              || status == 304
              || status == 404
              || status == 409
              || status == 412
              || status == 422
              || status == 428),
  /** Invalid under the schema. */
  REFUSED(
      Finding.Kind.INVALID_ACCEPTED,
      "is refused",
      status -> Set.of(400, 404, 409, 412, 422, 428).contains(status)),
  /** A body that is no JSON. */
  MALFORMED(Finding.Kind.WRONG_REFUSAL, "is 400", status -> status == 400),
  TOO_LARGE(Finding.Kind.WRONG_REFUSAL, "is 413", status -> status == 413),
  NOT_ACCEPTABLE(Finding.Kind.WRONG_REFUSAL, "is 406", status -> status == 406),
  UNSUPPORTED(Finding.Kind.WRONG_REFUSAL, "is 415", status -> status == 415),
  NO_SUCH_METHOD(Finding.Kind.WRONG_REFUSAL, "is 405", status -> status == 405),
  NOT_MODIFIED(Finding.Kind.WRONG_REFUSAL, "is 304", status -> status == 304),
  UNAUTHORIZED(Finding.Kind.UNGUARDED, "is 401", status -> status == 401),
  /** Told as forbidden, or as not there. */
  KEPT_FROM_OTHERS(Finding.Kind.LEAK, "is 403 or 404", status -> status == 403 || status == 404),
  /** Wanted, and done. */
  DONE(Finding.Kind.EXAMPLE_REFUSED, "is done", status -> status / 100 == 2),
  /** Wanted by somebody who may, but not as things stand. */
  NOT_DONE(Finding.Kind.DONE_TWICE, "is done no second time", status -> status / 100 == 4),
  /** A thing whose making was refused. */
  NOT_MADE(Finding.Kind.LEFT_BEHIND, "is not there", status -> status == 404),
  /** A thing that was taken away. */
  GONE(Finding.Kind.STILL_THERE, "is gone", status -> status == 404 || status == 410),
  /** Nothing is known but that the service must not fail. */
  SURVIVED(Finding.Kind.SERVER_FAULT, "is no fault of ours", status -> status < 500);

  private final Finding.Kind otherwise;
  private final String words;
  private final IntPredicate statuses;

  Expected(Finding.Kind otherwise, String words, IntPredicate statuses) {
    this.otherwise = otherwise;
    this.words = words;
    this.statuses = statuses;
  }

  boolean allows(int status) {
    return statuses.test(status);
  }

  Finding.Kind otherwise() {
    return otherwise;
  }

  String words() {
    return words;
  }
}
