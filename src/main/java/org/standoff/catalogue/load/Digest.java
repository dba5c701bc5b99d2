package org.standoff.catalogue.load;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Map;

/** Names content by its SHA-256. */
final class Digest {

  /** Sixty bits are enough to tell versions apart, and short enough to be read out. */
  private static final int SHORT_LENGTH = 15;

  private Digest() {}

  /** All of it, in hexadecimal digits. */
  static String of(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException everyJdkHasIt) {
      throw new IllegalStateException(everyJdkHasIt);
    }
  }

  /** A revision: the beginning of a digest. */
  static String revision(String digest) {
    return digest.substring(0, SHORT_LENGTH);
  }

  /** A digest over named digests, whatever their order. */
  static String of(Map<String, String> digestByName) {
    StringBuilder text = new StringBuilder();
    new java.util.TreeMap<>(digestByName)
        .forEach((name, digest) -> text.append(name).append('\0').append(digest).append('\n'));
    return of(text.toString().getBytes(StandardCharsets.UTF_8));
  }
}
