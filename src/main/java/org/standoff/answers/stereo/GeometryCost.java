package org.standoff.answers.stereo;

/** CPU time that a geometry takes, estimated from the sizes of its question; measured over HTTP. */
final class GeometryCost {
  private static final double MS_PER_QUESTION = 0.5;
  private static final double MS_PER_SOURCE = 0.02;

  /** A model that hears one source. */
  private static final double MS_PER_IMAGE = 0.012;

  private GeometryCost() {}

  static double ms(int sources, int models) {
    return MS_PER_QUESTION + sources * (MS_PER_SOURCE + models * MS_PER_IMAGE);
  }
}
