/**
 * Two capsules in space: level and time differences (left minus right, time positive when the left
 * leads), image position by published listening studies, recording angle, the mono sum, and the
 * search for a pair that fills the loudspeakers. Metres, degrees, milliseconds, dB; image positions
 * run from −100 at the right loudspeaker to +100 at the left. Each study and trade layout names its
 * source. May use acoustics and chain.
 */
@NullMarked
package org.standoff.pairs;

import org.jspecify.annotations.NullMarked;
