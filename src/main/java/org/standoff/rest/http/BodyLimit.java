package org.standoff.rest.http;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** How long a body may be: 1 MiB, and 32 MiB of a sheet where a house publishes its kit. */
public final class BodyLimit {

  public static final int BYTES = 1 << 20;
  public static final int SHEET_BYTES = 32 << 20;

  private static final Pattern WHERE_SHEETS_GO = Pattern.compile("/v1/houses/[^/]+/units/?");
  private static final Pattern SHEET =
      Pattern.compile("text/csv\\s*(;.*)?", Pattern.CASE_INSENSITIVE);

  private BodyLimit() {}

  /** How many bytes a body of this media type may have at an address. */
  static int of(String path, @Nullable String mediaType) {
    boolean isSheet =
        mediaType != null
            && SHEET.matcher(mediaType.strip()).matches()
            && WHERE_SHEETS_GO.matcher(path).matches();
    return isSheet ? SHEET_BYTES : BYTES;
  }
}
