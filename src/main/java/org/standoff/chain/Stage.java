package org.standoff.chain;

import java.util.Optional;

/** The stages that can clip, in the order of the signal. */
public enum Stage {
  ELECTRONICS("electronics"),
  PREAMP_INPUT("preamp-input"),
  PREAMP_OUTPUT("preamp-output"),
  CONVERTER("converter");

  private final String id;

  Stage(String id) {
    this.id = id;
  }

  /** The word used in files and answers. */
  public String id() {
    return id;
  }

  /** The constant of that id, if there is one. */
  public static Optional<Stage> ofId(String id) {
    for (Stage value : values()) {
      if (value.id.equals(id)) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }
}
