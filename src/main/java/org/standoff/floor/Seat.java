package org.standoff.floor;

import org.standoff.acoustics.Point3;

/**
 * Where somebody's ears are.
 *
 * @param id name on this floor
 * @param title the name for people
 * @param ears between the ears
 */
public record Seat(String id, String title, Point3 ears) {}
