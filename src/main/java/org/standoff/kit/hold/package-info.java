/**
 * Holds: units promised to a desk for a period, all or none of them. A hold that is short may wait
 * in line as a second one. What is due falls by the clock of the database before anything else
 * happens, and whatever frees units gives them, in the same transaction, to those who wait.
 */
@NullMarked
package org.standoff.kit.hold;

import org.jspecify.annotations.NullMarked;
