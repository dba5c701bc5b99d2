package org.standoff.catalogue.load;

import java.time.Instant;
import java.util.List;
import org.standoff.catalogue.ItemIndex;
import org.standoff.catalogue.Pack;

/**
 * A version of a pack that has no fault.
 *
 * @param pack what it says of itself
 * @param items of it
 * @param loaded when
 */
record GoodPack(Pack pack, List<ItemIndex.Typed<?>> items, Instant loaded) {
  GoodPack {
    items = List.copyOf(items);
  }
}
