/**
 * What has an owner and a date: houses and, with them, units, availability and holds. The only
 * package, beside sessions, that sees the database. Days begin in the house's own time zone;
 * instants carry an offset. Calculation never waits for anything here. May use catalogue.
 */
package org.standoff.kit;
