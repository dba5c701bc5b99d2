package org.standoff.pairs.listening;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;

/**
 * One sound's image under several models: they come from different listening tests and needn't
 * agree, so the spread belongs to the answer.
 *
 * @param images in the order of the models; those that place no images are left out
 */
public record Images(List<Image> images) {
  public Images {
    images = List.copyOf(images);
  }

  /** Images for a level and a time difference, left minus right, finite. */
  public static Images of(List<ListeningModel> models, double levelDb, double timeMs) {
    return new Images(models.stream().flatMap(model -> imageBy(model, levelDb, timeMs)).toList());
  }

  /** Greatest less smallest position in per cent of the half base; 0 for none or one model. */
  public double spreadPct() {
    double most = images.stream().mapToDouble(Image::positionPct).max().orElse(0);
    double least = images.stream().mapToDouble(Image::positionPct).min().orElse(0);
    return most - least;
  }

  private static Stream<Image> imageBy(ListeningModel model, double levelDb, double timeMs) {
    OptionalDouble position = model.imagePct(levelDb, timeMs);
    if (position.isEmpty()) {
      return Stream.empty();
    }
    OptionalDouble meant = model.study().meantUpToPct();
    boolean beyond = meant.isPresent() && Math.abs(position.getAsDouble()) > meant.getAsDouble();
    return Stream.of(new Image(model.study().id(), position.getAsDouble(), beyond));
  }
}
