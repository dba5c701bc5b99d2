package org.standoff.rest.http;

import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** How long a body may be: 1 MiB, and 32 MiB of a sheet. */
public final class BodyLimit {

  public static final int BYTES = 1 << 20;
  public static final int SHEET_BYTES = 32 << 20;

  private static final String SHEET = "text/csv";

  private BodyLimit() {}

  /** How many bytes a body of this media type may have. */
  static int of(@Nullable String mediaType) {
    return mediaType != null && mediaType.toLowerCase(Locale.ROOT).startsWith(SHEET)
        ? SHEET_BYTES
        : BYTES;
  }
}
