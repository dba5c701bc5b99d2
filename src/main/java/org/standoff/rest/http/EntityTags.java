package org.standoff.rest.http;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Base64;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Strong entity tags (RFC 9110, 8.8.3). A tag is a digest over the very bytes of the answer and its
 * media type, and names its coding, so nothing that alters an answer can leave its tag alone: an
 * answer names the revision of the catalogue and the version of the engine that it rests on, and
 * they are digested with the rest.
 */
public final class EntityTags {

  private static final int DIGEST_BYTES = 16;

  /** Stands between a state and its form; the names of things that are changed have none. */
  private static final String FORM = ";";

  private EntityTags() {}

  /** The tag, with its quotes. */
  public static String of(byte[] representation, String mediaType) {
    MessageDigest digest = sha256();
    digest.update(mediaType.getBytes(StandardCharsets.UTF_8));
    byte[] sum = digest.digest(representation);
    byte[] cut = Arrays.copyOf(sum, DIGEST_BYTES);
    return '"' + Base64.getUrlEncoder().withoutPadding().encodeToString(cut) + '"';
  }

  /** The tag of the same answer in a coding: another representation. */
  static String inCoding(String tag, ContentCoding coding) {
    return unclosed(tag) + '-' + coding.token() + '"';
  }

  /**
   * The tag of one form of a state: that of the state, and the digest of the form. A thing that was
   * made is answered as it is read then, so a parameter of the type, which tells nothing that the
   * bytes don't, makes no other form.
   */
  static String ofForm(String state, byte[] representation, String mediaType) {
    String type = mediaType.split(";", 2)[0];
    return unclosed(state) + FORM + of(representation, type).substring(1);
  }

  /** Whether a tag is that of a state, or of any form or coding of it. */
  static boolean isOfState(String tag, String state) {
    return tag.equals(state)
        || Stream.of(ContentCoding.values()).anyMatch(c -> tag.equals(inCoding(state, c)))
        || tag.startsWith(unclosed(state) + FORM);
  }

  private static String unclosed(String tag) {
    return tag.substring(0, tag.length() - 1);
  }

  /**
   * Whether the caller's {@code If-None-Match} names this tag. The comparison is the weak one,
   * which RFC 9110, 13.1.2 wants here.
   */
  public static boolean matches(@Nullable String ifNoneMatch, String tag) {
    if (ifNoneMatch == null) {
      return false;
    }
    for (String part : ifNoneMatch.split(",", -1)) {
      String candidate = part.strip();
      String strong = candidate.startsWith("W/") ? candidate.substring(2) : candidate;
      if (strong.equals("*") || strong.equals(tag)) {
        return true;
      }
    }
    return false;
  }

  private static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException everyJdkHasIt) {
      throw new IllegalStateException(everyJdkHasIt);
    }
  }
}
