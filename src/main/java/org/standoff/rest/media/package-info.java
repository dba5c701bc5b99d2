/** Representations besides JSON: CSV, text, pictures. */
@NullMarked
package org.standoff.rest.media;

import org.jspecify.annotations.NullMarked;
