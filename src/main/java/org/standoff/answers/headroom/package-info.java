/** The chain alone: what a peak does to every stage at given settings, and which gain is right. */
@NullMarked
package org.standoff.answers.headroom;

import org.jspecify.annotations.NullMarked;
