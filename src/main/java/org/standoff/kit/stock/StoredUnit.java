package org.standoff.kit.stock;

/**
 * A unit of a house.
 *
 * @param house its owner
 * @param unit what the owner tells of it
 * @param revision counts its changes, from 1
 */
public record StoredUnit(String house, KitUnit unit, long revision) {}
