package org.standoff.rest.http;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The trace that a request belongs to, as its caller tells it (W3C Trace Context, level 1). */
final class TraceContext {

  static final String HEADER = "traceparent";

  /** Later versions may append more; version ff is none. */
  private static final Pattern FORM =
      Pattern.compile("(?!ff)([0-9a-f]{2})-([0-9a-f]{32})-([0-9a-f]{16})-[0-9a-f]{2}(-.*)?");

  private static final String FIRST_VERSION = "00";

  private TraceContext() {}

  /** The trace's id; empty where the header is missing or not to be used. */
  static Optional<String> traceId(@Nullable String header) {
    Matcher read = FORM.matcher(header == null ? "" : header);
    boolean usable =
        read.matches()
            && (read.group(4) == null || !read.group(1).equals(FIRST_VERSION))
            && !isZero(read.group(2))
            && !isZero(read.group(3));
    return usable ? Optional.of(read.group(2)) : Optional.empty();
  }

  private static boolean isZero(String hex) {
    return hex.chars().allMatch(digit -> digit == '0');
  }
}
