package org.standoff.contract.generated;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What came back.
 *
 * @param headers by name in lower case; of several of one name the last
 */
record Reply(int status, Map<String, String> headers, byte[] body) {

  Reply {
    Map<String, String> lower = new TreeMap<>();
    headers.forEach((name, value) -> lower.put(name.toLowerCase(Locale.ROOT), value));
    headers = lower;
  }

  Optional<String> header(String name) {
    return Optional.ofNullable(headers.get(name.toLowerCase(Locale.ROOT)));
  }

  /** Without its parameters. */
  String mediaType() {
    return header("Content-Type").orElse("").replaceFirst(";.*", "").strip();
  }

  String text() {
    return new String(body, UTF_8);
  }

  boolean isGood() {
    return status >= 200 && status < 300;
  }

  boolean isRefusal() {
    return status >= 400 && status < 500;
  }
}
