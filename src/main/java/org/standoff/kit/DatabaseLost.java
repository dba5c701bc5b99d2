package org.standoff.kit;

/**
 * The database is not there, went away in the middle, or has no tables yet. Nothing is known to
 * have been changed; where it went away at the very end, the change may still stand. A later try
 * may find it back.
 */
public final class DatabaseLost extends RuntimeException {

  private static final long serialVersionUID = 1L;

  /**
   * @param message for the caller: no address, no user, no statement
   * @param cause for the log
   */
  public DatabaseLost(String message, Throwable cause) {
    super(message, cause);
  }

  public DatabaseLost(String message) {
    super(message);
  }
}
