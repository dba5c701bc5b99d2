package org.standoff.rest.security;

import jakarta.annotation.security.RolesAllowed;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import java.util.Map;
import java.util.OptionalLong;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.standoff.kit.Caller;
import org.standoff.rest.http.ChangeConditions;

/** Does in tests what a resource of the kit does with its caller. */
@Path("/guarded")
@Produces(MediaType.APPLICATION_JSON)
public class GuardedProbe {

  private final CurrentCaller caller;

  GuardedProbe(CurrentCaller caller) {
    this.caller = caller;
  }

  @GET
  @Path("/anybody")
  @Operation(hidden = true)
  public Map<String, String> anybody() {
    return Map.of("subject", caller.ifAny().map(Caller::subject).orElse("nobody"));
  }

  @GET
  @Path("/somebody")
  @Operation(hidden = true)
  public Caller somebody() {
    return caller.get();
  }

  @PUT
  @Path("/{house}")
  @RolesAllowed({RoleNames.PUBLISHER, RoleNames.ADMIN})
  @Operation(hidden = true)
  public Caller publish(@PathParam("house") String house) {
    caller.get().mustPublishFor(house);
    return caller.get();
  }

  /** Stands at revision 7. */
  @PUT
  @Path("/thing")
  @Operation(hidden = true)
  public Map<String, String> change(@Context HttpHeaders headers) {
    ChangeConditions.of(headers)
        .on(revision -> "\"thing-" + revision + '"')
        .check(OptionalLong.of(7));
    return Map.of("changed", "yes");
  }
}
