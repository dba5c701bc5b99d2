package org.standoff.rest.http;

/**
 * An answer whose entity tag is known without its bytes, so that a list can tell it beforehand.
 *
 * @param tag strong, with its quotes
 * @param body what is sent
 */
public record Tagged(String tag, Object body) {}
