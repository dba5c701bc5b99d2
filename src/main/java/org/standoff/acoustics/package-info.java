/**
 * Sound before and at the capsule: how loud, at which frequency, after which way through the air,
 * and how a microphone pattern hears it. Levels are in dB re 20 µPa unless the name says otherwise,
 * lengths in metres, angles in degrees, frequencies in hertz; x is right, y front, z up, and
 * azimuth counts from the front, positive to the left (axes of ITU-R BS.2051). Peak and rms are
 * different types. Each formula names its published source. Sees {@code java.*} and the JSpecify
 * annotations only.
 */
@NullMarked
package org.standoff.acoustics;

import org.jspecify.annotations.NullMarked;
