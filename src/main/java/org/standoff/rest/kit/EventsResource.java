package org.standoff.rest.kit;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jspecify.annotations.Nullable;
import org.standoff.kit.event.Event;
import org.standoff.kit.event.EventCursor;
import org.standoff.kit.event.Events;
import org.standoff.kit.event.Feed;
import org.standoff.rest.http.ReadsQuery;
import org.standoff.rest.json.RequestReader;
import org.standoff.rest.openapi.QueryExample;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.security.CurrentCaller;

/** What happened, for programs that follow. */
@Path("/v1/events")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "kit")
public class EventsResource {

  private static final TypeReference<Map<String, Object>> MEMBERS = new TypeReference<>() {};

  private final Events events;
  private final RequestReader reader;
  private final ObjectMapper json;
  private final CurrentCaller caller;

  EventsResource(Events events, RequestReader reader, ObjectMapper json, CurrentCaller caller) {
    this.events = events;
    this.reader = reader;
    this.json = json;
    this.caller = caller;
  }

  @GET
  @ReadsQuery(EventQuery.class)
  @QueryExample(name = "from-the-beginning", query = "after=0-0&limit=20")
  @Operation(
      operationId = "getEvents",
      summary = "What happened after a place in the feed",
      description =
          "For programs that follow: send the next of an answer as after of the next request. The"
              + " order never changes, nothing is skipped, and the same place reads the same again."
              + " Everybody sees what houses did with their kit; a booker the holds of its desk"
              + " besides, a publisher those on its units, an admin all.")
  public FeedView events(@Context UriInfo uri) {
    EventQuery query = reader.readQuery(uri.getQueryParameters(), EventQuery.class);
    Feed feed = events.after(caller.ifAny(), cursor(query.after()), query.most());
    return new FeedView(
        feed.events().stream().map(this::told).toList(), feed.next().text(), feed.more());
  }

  private static EventCursor cursor(@Nullable String text) {
    if (text == null) {
      return EventCursor.START;
    }
    return EventCursor.parse(text)
        .orElseThrow(
            () ->
                new InvalidRequest(
                    Fault.ofParameter(
                            "after", FaultCode.WRONG_FORM, "This is no place in the feed.")
                        .found(text)
                        .allowed("next of an earlier answer, or nothing")));
  }

  private FeedView.Happened told(Event event) {
    return new FeedView.Happened(
        event.cursor().text(),
        event.at(),
        event.kind(),
        event.house().orElse(null),
        event.hold().map(hold -> HoldView.PATH + hold).orElse(null),
        members(event.detail()));
  }

  private Map<String, Object> members(String detail) {
    try {
      return json.readValue(detail, MEMBERS);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("The table holds well-formed JSON", impossible);
    }
  }
}
