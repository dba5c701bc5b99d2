package org.standoff.rest.kit;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.DELETE;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.kit.Caller;
import org.standoff.kit.Precondition;
import org.standoff.kit.Put;
import org.standoff.kit.house.Houses;
import org.standoff.kit.stock.FaultyKit;
import org.standoff.kit.stock.Stock;
import org.standoff.kit.stock.StoredUnit;
import org.standoff.kit.stock.UnknownUnit;
import org.standoff.rest.http.ChangeConditions;
import org.standoff.rest.http.Tagged;
import org.standoff.rest.json.RequestReader;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.problem.ProblemType;
import org.standoff.rest.security.CurrentCaller;

/** One unit of a house. */
@Path("/v1/houses/{house}/units/{serial}")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "kit")
public class UnitResource {

  private final Stock stock;
  private final Houses houses;
  private final RequestReader reader;
  private final CurrentCaller caller;

  UnitResource(Stock stock, Houses houses, RequestReader reader, CurrentCaller caller) {
    this.stock = stock;
    this.houses = houses;
    this.reader = reader;
    this.caller = caller;
  }

  @GET
  @Operation(
      operationId = "getUnit",
      summary = "A unit of a house",
      description = "A retired unit too stays readable, for the hires that it had.")
  @APIResponse(
      responseCode = "200",
      description = "The unit",
      content = @Content(schema = @Schema(implementation = UnitView.class)))
  public Tagged unit(
      @Parameter(description = KitWords.HOUSE, example = KitExamples.HOUSE) @PathParam("house")
          String house,
      @Parameter(description = KitWords.SERIAL, example = KitExamples.SERIAL) @PathParam("serial")
          String serial) {
    houses.get(house);
    return UnitView.tagged(stock.find(house, serial).orElseThrow(() -> new UnknownUnit(serial)));
  }

  @PUT
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "putUnit",
      summary = "Add a unit, or tell it anew",
      description =
          "By the house's publisher, or by an admin. The same again changes nothing. A unit that is"
              + " promised to somebody can't be retired or become another microphone (409, with the"
              + " holds). "
              + KitWords.TAKEN_BACK
              + KitWords.CONDITIONS)
  @RequestBody(
      required = true,
      content =
          @Content(
              mediaType = MediaType.APPLICATION_JSON,
              schema = @Schema(implementation = UnitTold.class),
              examples =
                  @ExampleObject(
                      name = "unit",
                      summary = "One of a matched pair",
                      value = KitExamples.UNIT)))
  @APIResponse(
      responseCode = "200",
      description = "The unit as it is now",
      content = @Content(schema = @Schema(implementation = UnitView.class)))
  @APIResponse(
      responseCode = "201",
      description = "The unit, which is new",
      content = @Content(schema = @Schema(implementation = UnitView.class)))
  public Response put(
      @Parameter(description = KitWords.HOUSE, example = KitExamples.HOUSE) @PathParam("house")
          String house,
      @Parameter(description = KitWords.SERIAL, example = KitExamples.SERIAL) @PathParam("serial")
          String serial,
      @Context HttpHeaders headers,
      InputStream body) {
    Caller publisher = publisherOf(house);
    KitNames.checkSerial(serial);
    UnitTold told = reader.read(body, UnitTold.class, Map.of("house", house));
    if (told.serial() != null && !told.serial().equals(serial)) {
      throw new InvalidRequest(
          ProblemType.RULE_BROKEN,
          List.of(
              Fault.atPointer(
                      "/serial",
                      FaultCode.CONTRADICTION,
                      "The serial number is not that of the address.")
                  .found(told.serial())
                  .allowed(serial)));
    }
    try {
      Put<StoredUnit> unit =
          stock.put(publisher, house, told.unit(serial), stands(headers, house, serial));
      return UnitView.tagged(unit.now()).put(unit.isNew());
    } catch (FaultyKit faulty) {
      throw KitFaults.inUnit(faulty);
    }
  }

  @DELETE
  @Operation(
      operationId = "retireUnit",
      summary = "Retire a unit",
      description =
          "It is lent no more, and stays on record for the hires that it had. By the house's"
              + " publisher, or by an admin. A unit that is promised to somebody can't be retired"
              + " (409, with the holds). Send its ETag as If-Match.")
  @APIResponse(
      responseCode = "200",
      description = "The unit, retired",
      content = @Content(schema = @Schema(implementation = UnitView.class)))
  public Tagged retire(
      @Parameter(description = KitWords.HOUSE, example = KitExamples.HOUSE) @PathParam("house")
          String house,
      @Parameter(description = KitWords.SERIAL, example = KitExamples.SERIAL) @PathParam("serial")
          String serial,
      @Context HttpHeaders headers) {
    Caller publisher = publisherOf(house);
    return UnitView.tagged(stock.retire(publisher, house, serial, stands(headers, house, serial)));
  }

  private Caller publisherOf(String house) {
    Caller publisher = caller.get();
    publisher.mustPublishFor(house);
    return publisher;
  }

  private static Precondition stands(HttpHeaders headers, String house, String serial) {
    return ChangeConditions.of(headers).on(revision -> UnitView.tag(house, serial, revision));
  }
}
