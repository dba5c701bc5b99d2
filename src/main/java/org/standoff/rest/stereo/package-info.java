/** Stereo pairs over HTTP: geometry and fit as JSON, sheets, lines and pictures. */
@NullMarked
package org.standoff.rest.stereo;

import org.jspecify.annotations.NullMarked;
