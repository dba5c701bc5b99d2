package org.standoff.contract.generated;

import java.util.Set;
import java.util.function.IntPredicate;

/**
 * Which answers a call may get. As narrow as the description allows; where one allows several, its
 * comment says what the description leaves open.
 */
enum Expected {
  /** An example of the description, or something as good: it is answered. */
  ANSWERED(Finding.Kind.EXAMPLE_REFUSED, "is answered", status -> status / 100 == 2),
  /** Made where nothing was (RFC 9110, 9.3.4). */
  CREATED(Finding.Kind.NOT_TOLD_AS_NEW, "is new: 201", status -> status == 201),
  /**
   * Valid under the schema. What no schema can say, that a name is known or that two members agree,
   * may still be refused, as a rule that is broken or a clash with what stands.
   */
  UNDERSTOOD(
      Finding.Kind.VALID_REFUSED,
      "is understood",
      status -> status / 100 == 2 || status == 409 || status == 422),
  /**
   * Invalid under the schema: as malformed, or, where it is a fault of a catalogue item that stands
   * in a question, as the rules of its file have it.
   */
  REFUSED(Finding.Kind.INVALID_ACCEPTED, "is refused", status -> status == 400 || status == 422),
  /**
   * What the description leaves to the reader: numbers that a binary64 has not, texts and numbers
   * beyond what anybody has to take, integers in other words, tokens that only the service can
   * tell, members that want others beside them, members that only the service sets, keys of any
   * form. Taken, or refused with a reason.
   */
  TAKEN_OR_REFUSED(
      Finding.Kind.WRONG_REFUSAL,
      "is taken or refused",
      status -> status / 100 == 2 || Set.of(400, 409, 422).contains(status)),
  /**
   * A name that nothing has: not there; or no name at all; or, for a change, not the state or the
   * name that it supposes.
   */
  UNKNOWN(
      Finding.Kind.INVALID_ACCEPTED,
      "is not there",
      status -> Set.of(400, 404, 409, 412, 422).contains(status)),
  /** A body that is no JSON. */
  MALFORMED(Finding.Kind.WRONG_REFUSAL, "is 400", status -> status == 400),
  TOO_LARGE(Finding.Kind.WRONG_REFUSAL, "is 413", status -> status == 413),
  NOT_ACCEPTABLE(Finding.Kind.WRONG_REFUSAL, "is 406", status -> status == 406),
  /** A field Accept that can't be read: RFC 9110, 12.5.1 lets a service pass over it or refuse. */
  ACCEPTED_SOMEHOW(
      Finding.Kind.WRONG_REFUSAL,
      "is answered, or 400 or 406",
      status -> status / 100 == 2 || status == 400 || status == 406),
  UNSUPPORTED(Finding.Kind.WRONG_REFUSAL, "is 415", status -> status == 415),
  /** A body without a type: RFC 9110, 8.3 lets a service look at the body, or not. */
  TAKEN_OR_UNSUPPORTED(
      Finding.Kind.WRONG_REFUSAL, "is taken, or 415", status -> status / 100 == 2 || status == 415),
  NO_SUCH_METHOD(Finding.Kind.WRONG_REFUSAL, "is 405", status -> status == 405),
  NOT_MODIFIED(Finding.Kind.WRONG_REFUSAL, "is 304", status -> status == 304),
  /** A change made for another state than the present one. */
  STALE(Finding.Kind.WRONG_REFUSAL, "is 412", status -> status == 412),
  /** A change that does not say for which state it was made. */
  UNCONDITIONAL(Finding.Kind.WRONG_REFUSAL, "is 428", status -> status == 428),
  UNAUTHORIZED(Finding.Kind.UNGUARDED, "is 401", status -> status == 401),
  /** Told as forbidden, or as not there; a list of nothing is no leak either. */
  KEPT_FROM_OTHERS(Finding.Kind.LEAK, "is 403 or 404", status -> status == 403 || status == 404),
  /** Put where it may stand already. */
  THERE_AFTERWARDS(
      Finding.Kind.EXAMPLE_REFUSED,
      "is made, or was there",
      status -> status / 100 == 2 || status == 412),
  /** Wanted by somebody who may, but done already: gone, or of another state. */
  NOT_DONE(
      Finding.Kind.DONE_TWICE,
      "is done no second time",
      status -> Set.of(404, 409, 410, 412).contains(status)),
  /** A thing whose making was refused. */
  NOT_MADE(Finding.Kind.LEFT_BEHIND, "is not there", status -> status == 404),
  /** A thing that was taken away. */
  GONE(Finding.Kind.STILL_THERE, "is gone", status -> status == 404 || status == 410),
  /** A thing that was taken away and may stay on record: what it says then is looked at. */
  GONE_OR_ON_RECORD(
      Finding.Kind.STILL_THERE,
      "is gone, or on record",
      status -> status == 200 || status == 404 || status == 410);

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

  /** Whether it may change something. */
  boolean mayBeDone() {
    return allows(200) || allows(201);
  }

  Finding.Kind otherwise() {
    return otherwise;
  }

  String words() {
    return words;
  }
}
