package org.standoff.rest.catalogue;

import org.standoff.catalogue.Item;

/**
 * What a list of items is narrowed by, and in which order it is; members that are null narrow
 * nothing.
 *
 * @param <T> the record of the kind
 */
interface ItemQuery<T> {

  /** Only items of this pack. */
  String pack();

  /** Words that all stand in the id, the title or the notes. */
  String q();

  /** Whether an item of this value stays in the list. */
  boolean keeps(T value);

  /**
   * Where in the list an item stands: texts in their order. No two items have the same, because it
   * ends with the id, and a page begins after the one that ended the page before.
   */
  default String placeOf(Item<? extends T> item) {
    return item.id().toString();
  }
}
