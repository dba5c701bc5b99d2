/**
 * Questions about kit that need the catalogue too: what is free with what could stand in for it,
 * and which microphones a calculation may choose from because they are free.
 */
@NullMarked
package org.standoff.answers.kit;

import org.jspecify.annotations.NullMarked;
