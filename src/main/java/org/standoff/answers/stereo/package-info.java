/**
 * Stereo pairs: what a pair makes of given sources (geometry), and which pair makes of given
 * players what is wished (fit).
 */
@NullMarked
package org.standoff.answers.stereo;

import org.jspecify.annotations.NullMarked;
