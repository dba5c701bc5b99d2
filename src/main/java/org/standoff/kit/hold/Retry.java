package org.standoff.kit.hold;

import java.util.Arrays;
import java.util.function.Function;

/**
 * What makes a request safe to send again.
 *
 * @param key the caller's name for the request
 * @param fingerprint digest of its body
 * @param writing how the answer is written, so that it can be kept with its effect
 */
public record Retry(String key, byte[] fingerprint, Function<Hold, String> writing) {

  public Retry {
    fingerprint = fingerprint.clone();
  }

  @Override
  public byte[] fingerprint() {
    return fingerprint.clone();
  }

  boolean isOf(byte[] other) {
    return Arrays.equals(fingerprint, other);
  }
}
