package org.standoff.kit;

import java.util.Locale;
import java.util.Optional;

/** What somebody may do with kit. */
public enum Role {
  /** Publishes the kit of the one house that the token names. */
  PUBLISHER,
  /** Asks and holds for a desk, which is the subject of the token. */
  BOOKER,
  /** Does all of it for everybody. */
  ADMIN;

  /** As it is spelt in a token. */
  public String spelt() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The role of this spelling; a token may hold words that mean nothing here. */
  public static Optional<Role> ofSpelling(String word) {
    for (Role role : values()) {
      if (role.spelt().equals(word)) {
        return Optional.of(role);
      }
    }
    return Optional.empty();
  }
}
