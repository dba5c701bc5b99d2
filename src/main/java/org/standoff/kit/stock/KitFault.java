package org.standoff.kit.stock;

import java.util.Optional;

/**
 * Something about one unit that keeps a kit from being published.
 *
 * @param index of the unit among those given, from 0
 * @param member which part of it, as its table calls it: {@code matched_group}
 * @param kind what sort of fault
 * @param detail what is wrong, for people
 * @param found what stood there
 * @param allowed what may stand there
 * @param suggestion what was perhaps meant
 */
public record KitFault(
    int index,
    String member,
    Kind kind,
    String detail,
    String found,
    Optional<String> allowed,
    Optional<String> suggestion) {

  /** What sort of fault it is. */
  public enum Kind {
    /** The catalogue has no such microphone. */
    UNKNOWN_MICROPHONE,
    /** Fine as a value, but not beside what else is told. */
    CONTRADICTION
  }
}
