package org.standoff.answers;

/**
 * A reference, resolved.
 *
 * @param id {@code pack/item}, or {@code inline/preamp} for an item that came with the question,
 *     called after its place
 * @param item the item
 */
public record Resolved<T>(String id, T item) {}
