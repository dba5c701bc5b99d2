package org.standoff.chain;

import java.util.Optional;

/** What turns pressure into voltage. */
public enum Transducer {
  CONDENSER("condenser", false),
  ELECTRET("electret", false),
  MOVING_COIL("moving-coil", true),
  PASSIVE_RIBBON("passive-ribbon", true),
  ACTIVE_RIBBON("active-ribbon", false);

  private final String id;
  private final boolean passive;

  Transducer(String id, boolean passive) {
    this.id = id;
    this.passive = passive;
  }

  /** The word used in files and answers. */
  public String id() {
    return id;
  }

  /** Whether there are no electronics: its noise is the thermal noise of its source impedance. */
  public boolean passive() {
    return passive;
  }

  /** Whether it is a metal strip in a magnet, which a jet of air can destroy. */
  public boolean ribbon() {
    return this == PASSIVE_RIBBON || this == ACTIVE_RIBBON;
  }

  /** The transducer of that id, if there is one. */
  public static Optional<Transducer> ofId(String id) {
    for (Transducer value : values()) {
      if (value.id.equals(id)) {
        return Optional.of(value);
      }
    }
    return Optional.empty();
  }
}
