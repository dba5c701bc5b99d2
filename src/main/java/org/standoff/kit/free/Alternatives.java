package org.standoff.kit.free;

import java.util.Collection;
import java.util.List;

/** Chooses which other models of a house are worth a look where it is short of a line. */
@FunctionalInterface
public interface Alternatives {

  /** For questions that want none. */
  Alternatives NONE = (wanted, models) -> List.of();

  /**
   * The models that could stand in, the best first.
   *
   * @param wanted the line that is short
   * @param models all that the house has, free or not
   */
  List<String> of(WantedLine wanted, Collection<String> models);
}
