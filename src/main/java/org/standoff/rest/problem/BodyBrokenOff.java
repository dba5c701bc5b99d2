package org.standoff.rest.problem;

/** A body that ended before its end: the caller went away, or was ended for being too slow. */
public final class BodyBrokenOff extends RuntimeException {

  private static final long serialVersionUID = 1L;

  public BodyBrokenOff(Throwable cause) {
    super("The body broke off before its end.", cause);
  }
}
