/**
 * What is free: counts per model and house in a period, when what is short is short, when it is
 * free next, over which houses a wish can be split, and what that costs. Reads houses, units and
 * holds in one snapshot and changes nothing.
 */
@NullMarked
package org.standoff.kit.free;

import org.jspecify.annotations.NullMarked;
