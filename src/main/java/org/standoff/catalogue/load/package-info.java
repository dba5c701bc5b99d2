/**
 * Loads pack files: reads YAML from strangers with care, checks it against the schemas and against
 * what it refers to, keeps the last good version of a pack that has faults, and swaps the snapshot
 * whole. Plain Java apart from the wiring, so that it is tested without a server.
 */
package org.standoff.catalogue.load;
