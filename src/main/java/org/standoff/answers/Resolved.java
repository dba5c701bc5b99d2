package org.standoff.answers;

/**
 * A reference, resolved.
 *
 * @param id {@code pack/item}, or {@code inline} for an item that came with the question
 * @param item the item
 */
public record Resolved<T>(String id, T item) {
  /** What stands for the id of an item that came with the question. */
  public static final String INLINE = "inline";
}
