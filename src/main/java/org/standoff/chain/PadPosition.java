package org.standoff.chain;

import java.util.Optional;

/** Where a pad sits: only one ahead of the electronics raises the level that they bear. */
public enum PadPosition {
  BEFORE_ELECTRONICS("before-electronics"),
  AFTER_ELECTRONICS("after-electronics");

  private final String id;

  PadPosition(String id) {
    this.id = id;
  }

  /** The word used in files and answers. */
  public String id() {
    return id;
  }

  /** The constant of that id, if there is one. */
  public static Optional<PadPosition> ofId(String id) {
    for (PadPosition value : values()) {
      if (value.id.equals(id)) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }
}
