package org.standoff.rest.stereo;

import org.jspecify.annotations.Nullable;
import org.standoff.answers.stereo.GeometryAnswer;
import org.standoff.answers.stereo.StereoPicture;

/** Draws the picture that a question asks for. */
final class StereoPictures {
  private StereoPictures() {}

  static String draw(GeometryAnswer answer, @Nullable StereoPicture picture) {
    return switch (picture == null ? StereoPicture.PAIR : picture) {
      case PAIR -> PairPicture.draw(answer);
      case IMAGES -> ImagesPicture.draw(answer);
      case MONO -> MonoPicture.draw(answer);
    };
  }
}
