package org.standoff.contract.generated;

import java.util.concurrent.atomic.AtomicLong;

/**
 * Makes calls as somebody sends them who wants them to succeed, so that only what is tried can be
 * the reason where one does not.
 */
final class Ready {
  private static final String REPEATABLE = "Idempotency-Key";
  private static final AtomicLong KEYS = new AtomicLong(System.nanoTime());

  private final Credentials credentials;

  Ready(Credentials credentials) {
    this.credentials = credentials;
  }

  /**
   * By one who may, for whatever state is there, never as the repetition of an earlier call; and
   * where it may be done, upon things of its own.
   */
  Call whole(Api.Operation operation, Call call, Expected expected) {
    return uponWhatItNames(operation, uponItsOwn(operation, call, expected));
  }

  /** The same upon things that live longer than one call. */
  Call uponWhatItNames(Api.Operation operation, Call call) {
    Call signed = credentials.sign(operation, call);
    boolean silent =
        operation.isConditional()
            && !signed.headers().containsKey("If-Match")
            && !signed.headers().containsKey("If-None-Match");
    Call conditional = silent ? signed.with("If-Match", "*") : signed;
    return conditional.headers().containsKey(REPEATABLE)
        ? conditional.with(REPEATABLE, "\"g-" + KEYS.incrementAndGet() + "\"")
        : conditional;
  }

  /** Upon things of its own, with the headers that it has: they are what is tried. */
  Call withItsHeaders(Api.Operation operation, Call call, Expected expected) {
    return credentials.sign(operation, uponItsOwn(operation, call, expected));
  }

  private Call uponItsOwn(Api.Operation operation, Call call, Expected expected) {
    return expected.mayBeDone() ? credentials.uponItsOwn(operation, call) : call;
  }
}
