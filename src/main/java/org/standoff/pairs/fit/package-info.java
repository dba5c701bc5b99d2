/**
 * Turns stereo round: players, stand, bar and microphones in; pairs whose measures are solved so
 * that the players fill a wished share of the loudspeaker base out, ranked, with what each gives
 * up, and why the others can't. Uses the true distances throughout. Sees acoustics, chain and the
 * pairs that it chooses from.
 */
@NullMarked
package org.standoff.pairs.fit;

import org.jspecify.annotations.NullMarked;
