package org.standoff.launch;

import java.nio.file.Path;

/** The service's own keys can't be read or made; the message says what to do. */
public final class KeysUnavailable extends RuntimeException {

  private static final long serialVersionUID = 1L;

  KeysUnavailable(Path folder, Exception cause) {
    super(
        "The keys for tokens in '"
            + folder
            + "' can't be read or made ("
            + cause
            + "). Let the service write there, choose another folder with STANDOFF_DATA_FOLDER, or"
            + " name an issuer's keys with STANDOFF_TOKENS_KEYS.",
        cause);
  }
}
