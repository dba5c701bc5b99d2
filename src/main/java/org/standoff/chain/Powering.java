package org.standoff.chain;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a microphone needs on its line.
 *
 * @param need phantom, nothing, or nothing and never phantom
 * @param currentMa current drawn from the phantom supply, in mA; absent where none is needed
 */
public record Powering(Need need, OptionalDouble currentMa) {

  /** The kinds of need. */
  public enum Need {
    /** Phantom supply P48 as in IEC 61938. */
    P48("p48"),
    /** No supply; phantom does no harm. */
    NONE("none"),
    /** No supply; phantom may destroy it. */
    NONE_AND_NEVER("none-and-never");

    private final String id;

    Need(String id) {
      this.id = id;
    }

    /** The word used in files and answers. */
    public String id() {
      return id;
    }

    /** The need of that id, if there is one. */
    public static Optional<Need> ofId(String id) {
      for (Need value : values()) {
        if (value.id.equals(id)) {
          return Optional.of(value);
        }
      }
      return Optional.empty();
    }
  }
}
