package org.standoff.rest.http;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Optional;

/**
 * Where the next page begins: after this key, in the list that the same filter gives. Opaque to
 * callers.
 *
 * @param filter fingerprint of the filter that the list was made with
 * @param after key of the last item that was given; no control characters, or it is not ours
 */
record PageToken(int filter, String after) {

  private static final String SEPARATOR = " ";

  String text() {
    String plain = Integer.toHexString(filter) + SEPARATOR + after;
    return Base64.getUrlEncoder()
        .withoutPadding()
        .encodeToString(plain.getBytes(StandardCharsets.UTF_8));
  }

  static Optional<PageToken> parse(String text) {
    try {
      String plain = new String(Base64.getUrlDecoder().decode(text), StandardCharsets.UTF_8);
      String[] parts = plain.split(SEPARATOR, 2);
      return parts.length == 2 && parts[1].chars().noneMatch(Character::isISOControl)
          ? Optional.of(new PageToken(Integer.parseUnsignedInt(parts[0], 16), parts[1]))
          : Optional.empty();
    } catch (IllegalArgumentException notOurs) {
      return Optional.empty();
    }
  }
}
