/**
 * Houses and their terms: when they are open, how long they need between two hires, what a day
 * costs. Days and hours are those of the house's own zone, by the rules of java.time.
 */
@NullMarked
package org.standoff.kit.house;

import org.jspecify.annotations.NullMarked;
