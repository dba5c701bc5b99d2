package org.standoff.acoustics;

import java.util.Optional;

/** What a microphone is there for at a placement. A closed list. */
public enum Purpose {
  ATTACK("attack"),
  BODY("body"),
  WEIGHT("weight"),
  WHOLE("whole"),
  ROOM("room");

  private final String id;

  Purpose(String id) {
    this.id = id;
  }

  /** The word used in files and answers. */
  public String id() {
    return id;
  }

  /** The purpose of that id, if there is one. */
  public static Optional<Purpose> ofId(String id) {
    for (Purpose purpose : values()) {
      if (purpose.id.equals(id)) {
        return Optional.of(purpose);
      }
    }
    return Optional.empty();
  }
}
