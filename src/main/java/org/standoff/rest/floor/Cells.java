package org.standoff.rest.floor;

import java.util.OptionalDouble;

/** Cells of sheets. */
final class Cells {
  private Cells() {}

  /** The figure; nothing where there is none. */
  static Object of(OptionalDouble figure) {
    return figure.isPresent() ? (Object) figure.getAsDouble() : "";
  }
}
