/**
 * Where listeners put an image for a level and a time difference between two loudspeakers: each
 * published study as one model whose figures come from a catalogue file. Differences are left minus
 * right in dB and ms; positions run from −100 at the right loudspeaker to +100 at the left. Sees
 * {@code java.*} and the JSpecify annotations only.
 */
@NullMarked
package org.standoff.pairs.listening;

import org.jspecify.annotations.NullMarked;
