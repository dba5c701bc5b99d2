/**
 * Starts the service: finds out whether a PostgreSQL server was given, brings up the embedded one
 * if not, and tells on the log where the service answers. Times are in seconds. Sees configuration
 * only.
 */
package org.standoff.launch;
