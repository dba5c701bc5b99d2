package org.standoff.answers.kit;

import java.util.List;
import java.util.stream.Stream;
import org.standoff.kit.free.FreeStock;
import org.standoff.kit.free.Shelf;

/**
 * How many units of which models are free in a period, over all houses asked.
 *
 * @param stock shelf by shelf
 */
public record FreeUnits(FreeStock stock) {

  /** Names the state of the kit. */
  public String kitRevision() {
    return stock.revision();
  }

  /** Units that are free. */
  public int freeCount(String microphone) {
    return shelves(microphone).mapToInt(Shelf::freeCount).sum();
  }

  /** Units that the houses have, free or not. */
  public int unitCount(String microphone) {
    return shelves(microphone).mapToInt(Shelf::unitCount).sum();
  }

  /** Units of the largest matched group that is free; 0 without one. */
  public int largestGroup(String microphone) {
    return shelves(microphone)
        .map(Shelf::groups)
        .flatMap(List::stream)
        .mapToInt(Shelf.Group::size)
        .max()
        .orElse(0);
  }

  private Stream<Shelf> shelves(String microphone) {
    return stock.shelves().stream().filter(shelf -> shelf.model().microphone().equals(microphone));
  }
}
