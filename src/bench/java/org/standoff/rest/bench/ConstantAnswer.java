package org.standoff.rest.bench;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.MediaType;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.eclipse.microprofile.openapi.annotations.Operation;

/**
 * The yardstick of the HTTP bench: a JSON text of a wanted size that costs nothing to make. It is
 * built in by the bench profile alone.
 */
@Path("/bench/constant")
public class ConstantAnswer {
  private static final String AROUND = "{\"constant\": \"\"}";

  private final Map<Integer, String> texts = new ConcurrentHashMap<>();

  /** The text. */
  @GET
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(hidden = true)
  public String get(@QueryParam("bytes") int bytes) {
    return texts.computeIfAbsent(
        bytes, n -> "{\"constant\": \"" + "x".repeat(Math.max(0, n - AROUND.length())) + "\"}");
  }
}
