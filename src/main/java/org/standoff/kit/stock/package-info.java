/**
 * The units of a house: each a microphone with a serial number. A house publishes its whole kit at
 * once or unit by unit; what is promised to somebody can't be taken away.
 */
@NullMarked
package org.standoff.kit.stock;

import org.jspecify.annotations.NullMarked;
