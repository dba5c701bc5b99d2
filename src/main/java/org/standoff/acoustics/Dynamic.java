package org.standoff.acoustics;

import java.util.Optional;

/** How hard a source is played. Catalogue levels are for {@link #LOUD}. */
public enum Dynamic {
  SOFT("soft"),
  MEDIUM("medium"),
  LOUD("loud");

  private final String id;

  Dynamic(String id) {
    this.id = id;
  }

  /** The word used in files and answers. */
  public String id() {
    return id;
  }

  /** The dynamic of that id, if there is one. */
  public static Optional<Dynamic> ofId(String id) {
    for (Dynamic dynamic : values()) {
      if (dynamic.id.equals(id)) {
        return Optional.of(dynamic);
      }
    }
    return Optional.empty();
  }
}
