package org.standoff.kit.hold;

import java.util.Optional;
import java.util.Set;
import org.standoff.kit.Caller;
import org.standoff.kit.Role;

/** Who may ask in tests. */
public final class Callers {

  public static final Caller ADMIN = new Caller("warden", Set.of(Role.ADMIN), Optional.empty());

  private Callers() {}

  public static Caller desk(String name) {
    return new Caller(name, Set.of(Role.BOOKER), Optional.empty());
  }

  public static Caller publisher(String house) {
    return new Caller("clerk-of-" + house, Set.of(Role.PUBLISHER), Optional.of(house));
  }
}
