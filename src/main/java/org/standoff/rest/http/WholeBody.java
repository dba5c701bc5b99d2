package org.standoff.rest.http;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The body of a request as a resource gets it: {@link BodyIntake} has let it in, whole. */
public final class WholeBody {

  private WholeBody() {}

  public static byte[] of(InputStream body) {
    try {
      return body.readAllBytes();
    } catch (IOException lostFromMemory) {
      throw new UncheckedIOException(lostFromMemory);
    }
  }
}
