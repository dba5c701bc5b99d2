/**
 * What every answer has in common whatever it is about: the request's id, entity tags and
 * conditional requests (RFC 9110), caching (RFC 9111), paging with links (RFC 8288), limits and
 * security headers. Sizes are in bytes, times in seconds.
 */
package org.standoff.rest.http;
