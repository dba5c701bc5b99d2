package org.standoff.rest.http;

import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;

/**
 * An answer whose entity tag is known without its bytes, so that a list can tell it beforehand.
 *
 * @param tag strong, with its quotes
 * @param body what is sent
 */
public record Tagged(String tag, Object body) implements Named {

  @Override
  public String tagOf(byte[] bytes, String mediaType) {
    return tag;
  }

  /**
   * As the answer to a PUT: 201 where that made the thing, at its own address (RFC 9110, 9.3.4).
   */
  public Response put(boolean isNew) {
    return Response.status(isNew ? Response.Status.CREATED : Response.Status.OK)
        .entity(this)
        .type(MediaType.APPLICATION_JSON_TYPE)
        .build();
  }
}
