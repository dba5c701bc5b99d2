package org.standoff.rest.kit;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.kit.Caller;
import org.standoff.kit.hold.HoldCharges;
import org.standoff.rest.http.Keeping;
import org.standoff.rest.security.CurrentCaller;

/** What a hold costs. */
@Path("/v1/holds/{hold}/charge")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "kit")
public class HoldChargeResource {

  private final HoldCharges charges;
  private final HoldRefusals refusals;
  private final CurrentCaller caller;
  private final Keeping keeping;

  HoldChargeResource(
      HoldCharges charges, HoldRefusals refusals, CurrentCaller caller, Keeping keeping) {
    this.charges = charges;
    this.refusals = refusals;
    this.caller = caller;
    this.keeping = keeping;
  }

  @GET
  @Operation(
      operationId = "getHoldCharge",
      summary = "What a hold costs, and what is missing of it",
      description =
          "Unit by unit and house by house: days by the house's own rule, its least charge, days that"
              + " something is late, and what is not back. Before a hold is over it is the estimate."
              + " A booker sees it of holds of its own desk, a publisher the part of its own house,"
              + " an admin all.")
  @APIResponse(
      responseCode = "200",
      description = "What is owed, to whom, and what is missing",
      content = @Content(schema = @Schema(implementation = HoldChargeView.class)))
  public HoldChargeView charge(
      @Parameter(description = HoldWords.HOLD, example = HoldExamples.OUT) @PathParam("hold")
          String hold) {
    Caller asking = caller.get();
    UUID id = HoldPath.id(hold);
    keeping.forbid();
    return HoldChargeView.of(refusals.told(() -> charges.of(asking, id)));
  }
}
