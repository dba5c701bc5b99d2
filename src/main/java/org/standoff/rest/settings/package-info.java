/** Settings and headroom over HTTP. */
@NullMarked
package org.standoff.rest.settings;

import org.jspecify.annotations.NullMarked;
