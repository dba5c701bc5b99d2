package org.standoff.rest.http;

import java.io.IOException;
import java.io.InputStream;
import org.standoff.rest.problem.BodyTooLarge;

/** How much of a body is read: 1 MiB, and the same where no length was declared. */
public final class BodyLimit {

  public static final int BYTES = 1 << 20;

  private BodyLimit() {}

  /** The whole body, if it keeps the limit. */
  public static byte[] read(InputStream body) throws IOException {
    byte[] bytes = body.readNBytes(BYTES + 1);
    if (bytes.length > BYTES) {
      throw new BodyTooLarge(BYTES);
    }
    return bytes;
  }

  static String message() {
    return new BodyTooLarge(BYTES).getMessage();
  }
}
