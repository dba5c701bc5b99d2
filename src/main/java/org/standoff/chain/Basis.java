package org.standoff.chain;

import java.util.Optional;

/** What a figure of a sheet rests on. */
public enum Basis {
  STATED("stated"),
  MEASURED("measured"),
  ASSUMED("assumed");

  private final String id;

  Basis(String id) {
    this.id = id;
  }

  /** The word used in files and answers. */
  public String id() {
    return id;
  }

  /** The constant of that id, if there is one. */
  public static Optional<Basis> ofId(String id) {
    for (Basis value : values()) {
      if (value.id.equals(id)) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }
}
