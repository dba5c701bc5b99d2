package org.standoff.chain;

import java.util.Optional;

/** Where a high-pass filter sits: it relieves only the stages that follow it. */
public enum FilterPlace {
  BEFORE_ELECTRONICS("before-electronics"),
  AFTER_FIRST_STAGE("after-first-stage"),
  PREAMP("preamp");

  private final String id;

  FilterPlace(String id) {
    this.id = id;
  }

  /** The word used in files and answers. */
  public String id() {
    return id;
  }

  /** The constant of that id, if there is one. */
  public static Optional<FilterPlace> ofId(String id) {
    for (FilterPlace value : values()) {
      if (value.id.equals(id)) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }
}
