package org.standoff.answers.floor;

/** How sources spread their sound over a floor. */
public enum Radiation {
  /** By the radiator and the directivity of the catalogue. */
  AS_DESCRIBED,
  /** As points that radiate alike to all sides: what a sum by hand does. */
  OMNIDIRECTIONAL_POINTS
}
