package org.standoff.kit.free;

import java.util.List;

/**
 * What of some models, or of all, was free at one moment.
 *
 * @param revision names the state of the kit
 * @param shelves in the order of houses and models
 */
public record FreeStock(String revision, List<Shelf> shelves) {
  public FreeStock {
    shelves = List.copyOf(shelves);
  }
}
