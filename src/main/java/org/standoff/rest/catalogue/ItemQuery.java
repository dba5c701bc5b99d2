package org.standoff.rest.catalogue;

/**
 * What a list of items is narrowed by; members that are null narrow nothing.
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
}
