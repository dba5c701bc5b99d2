/**
 * From candidates to a ranking: every setting of every microphone is assessed, constraints refuse,
 * and preferences of a house style order what is left. A constraint is never traded for a
 * preference. Every verdict carries its reason with figures; units are those of the packages below
 * (dB, dBu, dBFS, metres, hertz). The rules are common practice of recording, named where they are
 * applied. May use every package of the core below it.
 */
@NullMarked
package org.standoff.advice;

import org.jspecify.annotations.NullMarked;
