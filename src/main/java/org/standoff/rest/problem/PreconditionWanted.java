package org.standoff.rest.problem;

/** A change of something that exists, and nothing that says which state it was made for. */
public final class PreconditionWanted extends RuntimeException {

  private static final long serialVersionUID = 1L;

  public PreconditionWanted() {
    super("This exists already: send its 'ETag' as 'If-Match' to change it.");
  }
}
