package org.standoff.kit.hold;

import java.util.Optional;
import java.util.OptionalInt;

/**
 * What is wrong with a wish whatever is free.
 *
 * @param place which part of it
 * @param line which line it concerns, from 0; empty where it is the whole
 * @param detail what is wrong and what to do, for people
 * @param found what was asked
 * @param allowed what would do
 */
public record WishFault(
    Place place, OptionalInt line, String detail, String found, Optional<String> allowed) {

  /** Part of a wish. */
  public enum Place {
    /** The house of a line. */
    HOUSE,
    /** When the period begins. */
    FROM,
    /** When it ends. */
    TO,
    /** A unit that was named. */
    UNIT
  }

  static WishFault of(Place place, String detail, Object found) {
    return new WishFault(
        place, OptionalInt.empty(), detail, String.valueOf(found), Optional.empty());
  }

  WishFault inLine(int number) {
    return new WishFault(place, OptionalInt.of(number), detail, found, allowed);
  }

  WishFault allowed(Object what) {
    return new WishFault(place, line, detail, found, Optional.of(String.valueOf(what)));
  }
}
