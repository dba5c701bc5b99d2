package org.standoff.advice;

import java.util.Optional;

/** What is known of phantom on the line. */
public enum LinePhantom {
  ON("on"),
  OFF("off"),
  FREE("free");

  private final String id;

  LinePhantom(String id) {
    this.id = id;
  }

  /** The word used in questions and answers. */
  public String id() {
    return id;
  }

  /** The constant of that id, if there is one. */
  public static Optional<LinePhantom> ofId(String id) {
    for (LinePhantom value : values()) {
      if (value.id.equals(id)) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }
}
