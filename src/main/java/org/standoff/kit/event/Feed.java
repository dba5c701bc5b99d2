package org.standoff.kit.event;

import java.util.List;

/**
 * A stretch of events.
 *
 * @param events in their order
 * @param next where to go on; after the last event that was looked at, seen by the caller or not
 * @param more whether there are more already
 */
public record Feed(List<Event> events, EventCursor next, boolean more) {

  public Feed {
    events = List.copyOf(events);
  }
}
