package org.standoff.rest.problem;

import io.smallrye.jwt.auth.principal.UnmatchedTokenKidException;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jose4j.jwt.consumer.ErrorCodes;
import org.jose4j.jwt.consumer.InvalidJwtException;
import org.jose4j.lang.InvalidAlgorithmException;

/**
 * Why a token was refused, in words that repeat nothing of it. Each is a sentence in ASCII without
 * quotes, because a header says it too.
 */
final class TokenRefusal {

  private static final String UNREADABLE =
      "What was sent as a token is none: a bearer token has three parts and is signed.";

  /** In the order in which they are told where several apply. */
  private static final Map<Integer, String> REASONS = new LinkedHashMap<>();

  static {
    REASONS.put(
        ErrorCodes.SIGNATURE_INVALID,
        "The token was changed after it was signed, or signed with another key than the issuer's.");
    REASONS.put(ErrorCodes.SIGNATURE_MISSING, "The token is not signed.");
    REASONS.put(ErrorCodes.EXPIRED, "The token has expired.");
    REASONS.put(ErrorCodes.NOT_YET_VALID, "The token does not hold yet.");
    REASONS.put(ErrorCodes.EXPIRATION_MISSING, "The token does not say when it expires.");
    REASONS.put(ErrorCodes.ISSUED_AT_MISSING, "The token does not say when it was issued.");
    REASONS.put(ErrorCodes.ISSUER_INVALID, "The token is from an issuer that is not trusted here.");
    REASONS.put(ErrorCodes.ISSUER_MISSING, "The token names no issuer.");
    REASONS.put(ErrorCodes.AUDIENCE_INVALID, "The token was made for another service.");
    REASONS.put(ErrorCodes.AUDIENCE_MISSING, "The token does not say for which service it is.");
  }

  private TokenRefusal() {}

  static String reason(Throwable failed) {
    if (has(failed, InvalidAlgorithmException.class).isPresent()) {
      return "The token is not signed, or by an algorithm that is not taken here.";
    }
    if (has(failed, UnmatchedTokenKidException.class).isPresent()) {
      return "The token is signed with a key that its issuer does not publish.";
    }
    return has(failed, InvalidJwtException.class)
        .flatMap(
            invalid ->
                REASONS.keySet().stream()
                    .filter(invalid::hasErrorCode)
                    .findFirst()
                    .map(REASONS::get))
        .orElse(UNREADABLE);
  }

  /** Whether the token was not even looked at, because the issuer's keys can't be had. */
  static boolean isForLackOfKeys(Throwable failed) {
    return has(failed, IOException.class).isPresent();
  }

  private static <E extends Throwable> Optional<E> has(Throwable failed, Class<E> cause) {
    for (Throwable at = failed; at != null; at = at.getCause()) {
      if (cause.isInstance(at)) {
        return Optional.of(cause.cast(at));
      }
    }
    return Optional.empty();
  }
}
