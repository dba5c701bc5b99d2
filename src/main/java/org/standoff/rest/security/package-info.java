/**
 * Who asks and whether they may: bearer tokens (RFC 6750, RFC 7519) become callers of the kit, and
 * a setting closes what is open without one. What is whose, kit decides itself.
 */
package org.standoff.rest.security;
