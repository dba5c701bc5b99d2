package org.standoff.pairs.fit;

import org.standoff.pairs.PairParameters;

/**
 * A layout's measures and where it stands.
 *
 * @param distanceM from the point among the players, horizontally
 */
record Setting(PairParameters measures, double distanceM) {}
