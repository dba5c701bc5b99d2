package org.standoff.kit;

import java.sql.SQLException;
import java.util.Objects;

/** A statement that the database refused; its SQL state says why. */
public final class StatementFailed extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String state;

  public StatementFailed(SQLException cause) {
    super(cause);
    this.state = Objects.requireNonNullElse(cause.getSQLState(), "");
  }

  /** What the database said, where a library has wrapped it; the failure itself where it didn't. */
  static RuntimeException behind(RuntimeException failure) {
    for (Throwable cause = failure.getCause(); cause != null; cause = cause.getCause()) {
      if (cause instanceof SQLException refused) {
        return new StatementFailed(refused);
      }
    }
    return failure;
  }

  /** The SQL state of five characters (PostgreSQL, appendix A); empty where there is none. */
  public String state() {
    return state;
  }
}
