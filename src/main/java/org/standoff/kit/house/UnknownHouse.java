package org.standoff.kit.house;

import java.util.Optional;

/** No house has this id. */
public final class UnknownHouse extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final String id;
  private final transient Optional<String> suggestion;

  public UnknownHouse(String id, Optional<String> suggestion) {
    super("No house has this id.");
    this.id = id;
    this.suggestion = suggestion;
  }

  public String id() {
    return id;
  }

  /** The id that was perhaps meant. */
  public Optional<String> suggestion() {
    return suggestion;
  }
}
