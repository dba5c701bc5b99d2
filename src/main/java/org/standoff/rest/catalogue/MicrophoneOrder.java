package org.standoff.rest.catalogue;

/** In which order microphones are listed. */
public enum MicrophoneOrder {
  /** As texts. */
  ID,
  /** The quietest first, by the quietest of its patterns; those without electronics last. */
  SELF_NOISE,
  /** What bears the highest level with its pad out first. */
  MAXIMUM_LEVEL
}
