package org.standoff.kit;

import java.util.Optional;
import java.util.Set;

/**
 * Who asks, as far as rights go.
 *
 * @param subject the name in the token; for a booker the desk that holds
 * @param roles what the token grants
 * @param house the house whose kit a publisher publishes
 */
public record Caller(String subject, Set<Role> roles, Optional<String> house) {

  public Caller {
    roles = Set.copyOf(roles);
  }

  public boolean isAdmin() {
    return roles.contains(Role.ADMIN);
  }

  /** Whether the kit of this house is the caller's to change. */
  public boolean publishesFor(String ofHouse) {
    return isAdmin() || roles.contains(Role.PUBLISHER) && house.filter(ofHouse::equals).isPresent();
  }

  /** Whether what this desk holds is the caller's to read and change. */
  public boolean booksFor(String desk) {
    return isAdmin() || roles.contains(Role.BOOKER) && subject.equals(desk);
  }

  /**
   * Returns if the caller may publish for the house. For things whose existence is public; a thing
   * that is private is rather not found.
   *
   * @throws NotPermitted if it is not the caller's house
   */
  public void mustPublishFor(String ofHouse) {
    if (!publishesFor(ofHouse)) {
      throw new NotPermitted("The token does not let its bearer publish for '" + ofHouse + "'.");
    }
  }
}
