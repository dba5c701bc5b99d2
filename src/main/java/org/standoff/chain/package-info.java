/**
 * The way of the signal from capsule to converter: microphone, its settings, an in-line pad, the
 * preamp, the converter. Answers which stage clips first, by how much it does not, what the noise
 * is made of, and which gain puts the peak where it is wanted. Levels are dBu (re 0.775 V), dBV (re
 * 1 V) and dBFS, all of them rms-of-a-sine figures; sound levels are in dB re 20 µPa. The
 * arithmetic is that of data sheets under IEC 60268-4. May use acoustics.
 */
@NullMarked
package org.standoff.chain;

import org.jspecify.annotations.NullMarked;
