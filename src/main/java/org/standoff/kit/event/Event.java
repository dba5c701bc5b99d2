package org.standoff.kit.event;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;

/**
 * Something that happened.
 *
 * @param cursor its place in the feed
 * @param at by the clock of the database
 * @param kind what happened: {@code hold-confirmed}, {@code kit-changed} and so on
 * @param house whose kit it is about
 * @param hold which hold it is about
 * @param detail figures and names, as a JSON object
 */
public record Event(
    EventCursor cursor,
    Instant at,
    String kind,
    Optional<String> house,
    Optional<UUID> hold,
    String detail) {}
