package org.standoff.acoustics;

import java.util.Optional;

/** How strongly air moves at a placement (breath, port, bell, cymbal edge). Common practice. */
public enum AirJet {
  NONE("none"),
  LIGHT("light"),
  STRONG("strong");

  private final String id;

  AirJet(String id) {
    this.id = id;
  }

  /** The word used in files and answers. */
  public String id() {
    return id;
  }

  /** The strength of that id, if there is one. */
  public static Optional<AirJet> ofId(String id) {
    for (AirJet jet : values()) {
      if (jet.id.equals(id)) {
        return Optional.of(jet);
      }
    }
    return Optional.empty();
  }
}
