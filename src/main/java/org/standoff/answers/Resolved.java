package org.standoff.answers;

/**
 * A reference, resolved.
 *
 * @param id {@code pack/item}, or {@code inline/1} for an item that came with the question
 * @param item the item
 */
public record Resolved<T>(String id, T item) {}
