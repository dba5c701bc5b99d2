/**
 * Players, microphones and barriers in one room: who is heard in which microphone, how late, and
 * what can cure it. Metres in the room, degrees of azimuth positive to the left, milliseconds, dB
 * per octave band; the direct part, reflections of the box and the late field are kept apart so
 * that nothing counts twice. Each term names its published source. May use acoustics, chain and
 * pairs, and Hipparchus for the aim search alone.
 */
@NullMarked
package org.standoff.floor;

import org.jspecify.annotations.NullMarked;
