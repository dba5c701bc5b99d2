package org.standoff.pairs.listening;

/**
 * Where one model puts an image.
 *
 * @param modelId id of its study
 * @param positionPct −100 (right loudspeaker) to +100 (left)
 * @param beyondStudy true when the position lies past what the study's figures are meant for
 */
public record Image(String modelId, double positionPct, boolean beyondStudy) {}
