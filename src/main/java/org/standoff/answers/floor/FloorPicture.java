package org.standoff.answers.floor;

/** What a picture of a floor shows. */
public enum FloorPicture {
  /** The floor from above, to scale: players, microphones, aims, nulls, barriers, offenders. */
  PLAN,
  /** What every microphone hears of every source, as a table. */
  MATRIX
}
