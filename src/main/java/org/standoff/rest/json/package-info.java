/**
 * Reads requests strictly and completely, and writes answers as every caller reads them: names in
 * snake_case with the unit last, numbers rounded once by that unit, neither NaN nor Infinity.
 */
package org.standoff.rest.json;
