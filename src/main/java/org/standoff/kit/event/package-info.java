/**
 * What happened, in an order that never changes, for programs that follow. The tables write it
 * themselves, so that no change can go untold.
 */
@NullMarked
package org.standoff.kit.event;

import org.jspecify.annotations.NullMarked;
