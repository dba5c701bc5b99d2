package org.standoff.rest.http;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.standoff.rest.problem.BodyTooLarge;

/**
 * How much of a body is read, whether or not a length was declared: 1 MiB, and 32 MiB of a sheet,
 * which is read row by row.
 */
public final class BodyLimit {

  public static final int BYTES = 1 << 20;
  public static final int SHEET_BYTES = 32 << 20;

  private static final String SHEET = "text/csv";

  private BodyLimit() {}

  /** The whole body, if it keeps the limit. */
  public static byte[] read(InputStream body) throws IOException {
    byte[] bytes = body.readNBytes(BYTES + 1);
    if (bytes.length > BYTES) {
      throw new BodyTooLarge(BYTES);
    }
    return bytes;
  }

  /** The body as far as it keeps the limit of sheets; reading on is refused. */
  public static InputStream sheet(InputStream body) {
    return new Bounded(body);
  }

  /** How many bytes a body of this media type may have. */
  static int of(@Nullable String mediaType) {
    return mediaType != null && mediaType.toLowerCase(Locale.ROOT).startsWith(SHEET)
        ? SHEET_BYTES
        : BYTES;
  }

  private static final class Bounded extends FilterInputStream {
    private int left = SHEET_BYTES;

    Bounded(InputStream in) {
      super(in);
    }

    @Override
    public int read() throws IOException {
      int read = super.read();
      count(read < 0 ? 0 : 1);
      return read;
    }

    @Override
    public int read(byte[] into, int offset, int length) throws IOException {
      int read = super.read(into, offset, length);
      count(Math.max(0, read));
      return read;
    }

    private void count(int read) {
      left -= read;
      if (left < 0) {
        throw new BodyTooLarge(SHEET_BYTES);
      }
    }
  }
}
