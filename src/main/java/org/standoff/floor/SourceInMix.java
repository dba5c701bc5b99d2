package org.standoff.floor;

/**
 * A source in the mix of all microphones at their faders, added as energy.
 *
 * @param sourceId id of the source
 * @param ownDb through the microphones that are there for it; −∞ when there is none
 * @param bleedDb through all others
 */
public record SourceInMix(String sourceId, double ownDb, double bleedDb) {}
