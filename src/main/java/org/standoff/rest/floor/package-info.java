/** Floors over HTTP: bleed, alignment, aim, the room, exposure, and their pictures. */
@NullMarked
package org.standoff.rest.floor;

import org.jspecify.annotations.NullMarked;
