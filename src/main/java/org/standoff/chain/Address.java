package org.standoff.chain;

import java.util.Optional;

/** From which side of its body a microphone works. */
public enum Address {
  SIDE("side"),
  END("end"),
  CLIP("clip"),
  BOUNDARY("boundary");

  private final String id;

  Address(String id) {
    this.id = id;
  }

  /** The word used in files and answers. */
  public String id() {
    return id;
  }

  /** The constant of that id, if there is one. */
  public static Optional<Address> ofId(String id) {
    for (Address value : values()) {
      if (value.id.equals(id)) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }
}
