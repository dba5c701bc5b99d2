package org.standoff.answers.stereo;

/** What a picture of a pair shows. */
public enum StereoPicture {
  /** The pair to scale, its patterns and aims; the sources and the recording angle around it. */
  PAIR,
  /** Where each source lands between the loudspeakers, model by model. */
  IMAGES,
  /** The level of the mono sum by direction and octave. */
  MONO
}
