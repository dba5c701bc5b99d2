package org.standoff.kit;

/**
 * What a put has left behind.
 *
 * @param now what is there now
 * @param isNew whether nothing was there before
 */
public record Put<T>(T now, boolean isNew) {}
