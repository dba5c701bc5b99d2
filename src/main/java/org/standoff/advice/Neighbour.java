package org.standoff.advice;

import java.util.Optional;
import org.standoff.acoustics.RmsSpl;
import org.standoff.acoustics.SoundPower;

/**
 * Another source that the microphone hears.
 *
 * @param title the name for people
 * @param direct its direct sound at the microphone's place, on the source's side of the pattern,
 *     long-term
 * @param angleDeg how far off the microphone's axis it arrives, 0..180°
 * @param power its sound power as played, for the late field; absent when not known
 */
public record Neighbour(String title, RmsSpl direct, double angleDeg, Optional<SoundPower> power) {}
