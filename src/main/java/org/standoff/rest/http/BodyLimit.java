package org.standoff.rest.http;

import java.io.FilterInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.time.Duration;
import java.util.Locale;
import java.util.function.LongSupplier;
import org.jspecify.annotations.Nullable;
import org.standoff.rest.problem.BodyTooLarge;
import org.standoff.rest.problem.BodyTooSlow;

/**
 * How much of a body is read, whether or not a length was declared: 1 MiB, and 32 MiB of a sheet,
 * which is read row by row; and for how long. A time-out between two bytes is not enough: a byte
 * every few seconds would hold a worker for as long as the sender likes.
 */
public final class BodyLimit {

  public static final int BYTES = 1 << 20;
  public static final int SHEET_BYTES = 32 << 20;

  /** How long a body may take to come in. */
  public static final Duration WITHIN = Duration.ofSeconds(60);

  private static final String SHEET = "text/csv";

  private BodyLimit() {}

  /** The whole body, if it keeps the limits. */
  public static byte[] read(InputStream body) throws IOException {
    return bounded(body, BYTES, System::nanoTime).readAllBytes();
  }

  /** The body as far as it keeps the limit of sheets; reading on is refused. */
  public static InputStream sheet(InputStream body) {
    return bounded(body, SHEET_BYTES, System::nanoTime);
  }

  /** How many bytes a body of this media type may have. */
  static int of(@Nullable String mediaType) {
    return mediaType != null && mediaType.toLowerCase(Locale.ROOT).startsWith(SHEET)
        ? SHEET_BYTES
        : BYTES;
  }

  static InputStream bounded(InputStream body, int most, LongSupplier nanoTime) {
    return new Bounded(body, most, nanoTime);
  }

  private static final class Bounded extends FilterInputStream {
    private final int most;
    private final LongSupplier nanoTime;
    private final long begun;
    private int left;

    Bounded(InputStream in, int most, LongSupplier nanoTime) {
      super(in);
      this.most = most;
      this.left = most;
      this.nanoTime = nanoTime;
      this.begun = nanoTime.getAsLong();
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
        throw new BodyTooLarge(most);
      }
      if (nanoTime.getAsLong() - begun > WITHIN.toNanos()) {
        throw new BodyTooSlow(WITHIN);
      }
    }
  }
}
