package org.standoff.rest.kit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.standoff.kit.hold.Hold;
import org.standoff.kit.hold.Retry;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;

/**
 * Reads the {@code Idempotency-Key} of a request (draft-ietf-httpapi-idempotency-key-header-07): a
 * string with its quotes (RFC 9651, 3.3.3), or the bare characters.
 */
@ApplicationScoped
class HoldRetries {

  private static final Pattern FORM =
      Pattern.compile(
          "\"([\\x20\\x21\\x23-\\x5b\\x5d-\\x7e]{1,128})\"|([\\x21\\x23-\\x7e]{1,128})");

  private final ObjectMapper json;

  HoldRetries(ObjectMapper json) {
    this.json = json;
  }

  /**
   * What makes the request safe to send again.
   *
   * @throws InvalidRequest where the key is missing or has another form
   */
  Retry of(@Nullable String header, HoldTold told) {
    return new Retry(key(header), digest(bytes(told)), this::written);
  }

  private static String key(@Nullable String header) {
    if (header == null) {
      throw new InvalidRequest(
          Fault.ofParameter(
                  HoldWords.KEY,
                  FaultCode.MISSING,
                  "A hold needs a key, so that a request that is sent again makes no second one.")
              .allowed("1 to 128 printable characters, new for every new wish"));
    }
    Matcher matcher = FORM.matcher(header.strip());
    if (!matcher.matches()) {
      throw new InvalidRequest(
          Fault.ofParameter(HoldWords.KEY, FaultCode.WRONG_FORM, "This key can't be read.")
              .found(header)
              .allowed("1 to 128 printable ASCII characters, plain or between quotes"));
    }
    return matcher.group(1) == null ? matcher.group(2) : matcher.group(1);
  }

  /** Two bodies that mean the same are the same, however they are laid out. */
  private byte[] bytes(HoldTold told) {
    try {
      return json.writeValueAsBytes(told);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("What was read can be written", impossible);
    }
  }

  private String written(Hold hold) {
    try {
      return json.writeValueAsString(HoldView.of(hold));
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("An answer can always be written", impossible);
    }
  }

  private static byte[] digest(byte[] body) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(body);
    } catch (NoSuchAlgorithmException everyJdkHasIt) {
      throw new IllegalStateException(everyJdkHasIt);
    }
  }
}
