package org.standoff.rest.floor;

import org.jspecify.annotations.Nullable;
import org.standoff.answers.floor.BleedAnswer;
import org.standoff.answers.floor.FloorPicture;

/** Draws what a question asks for. */
final class FloorPictures {
  private FloorPictures() {}

  static String draw(BleedAnswer answer, @Nullable FloorPicture picture) {
    return picture == FloorPicture.MATRIX ? MatrixPicture.draw(answer) : PlanPicture.draw(answer);
  }
}
