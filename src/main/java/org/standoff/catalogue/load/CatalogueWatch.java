package org.standoff.catalogue.load;

import java.util.Optional;

/**
 * Notices changes by looking at the stamps of all files again and again. Notifications of the file
 * system would come sooner, but not from network shares, container mounts or jars, and they are
 * lost when many come at once. A change is loaded when it has held still for one period, so that a
 * copy in progress is not read in the middle, or when the unrest does not end.
 */
final class CatalogueWatch {

  /** At two looks a second, five seconds of unrest. */
  static final int MOST_RESTLESS_LOOKS = 10;

  private final LiveCatalogue live;
  private Optional<Sight> pending = Optional.empty();
  private int restlessLooks;

  CatalogueWatch(LiveCatalogue live) {
    this.live = live;
  }

  /** One look; true when it led to a reload. */
  boolean look() {
    Sight now = live.look();
    if (live.isMadeFrom(now)) {
      pending = Optional.empty();
      restlessLooks = 0;
      return false;
    }
    restlessLooks++;
    if (pending.isPresent() && pending.get().equals(now) || restlessLooks >= MOST_RESTLESS_LOOKS) {
      pending = Optional.empty();
      restlessLooks = 0;
      live.reload();
      return true;
    }
    pending = Optional.of(now);
    return false;
  }
}
