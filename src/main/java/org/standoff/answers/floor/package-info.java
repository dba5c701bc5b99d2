/**
 * What stands in a room and what it does to each other: bleed, alignment, aim, the room, exposure.
 */
@NullMarked
package org.standoff.answers.floor;

import org.jspecify.annotations.NullMarked;
