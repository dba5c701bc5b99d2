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
import org.standoff.kit.pack.FaultyPack;
import org.standoff.kit.pack.HousePack;
import org.standoff.kit.pack.HousePacks;
import org.standoff.kit.pack.UnknownPack;
import org.standoff.rest.http.ChangeConditions;
import org.standoff.rest.http.Tagged;
import org.standoff.rest.json.RequestReader;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.problem.ProblemType;
import org.standoff.rest.security.CurrentCaller;

/** A catalogue pack that a house publishes of its own. */
@Path("/v1/houses/{house}/packs/{pack}")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "kit")
public class PackResource {

  private static final int MOST_FAULTS = 100;

  private final HousePacks packs;
  private final Houses houses;
  private final RequestReader reader;
  private final CurrentCaller caller;

  PackResource(HousePacks packs, Houses houses, RequestReader reader, CurrentCaller caller) {
    this.packs = packs;
    this.houses = houses;
    this.reader = reader;
    this.caller = caller;
  }

  @GET
  @Operation(
      operationId = "getHousePack",
      summary = "A catalogue pack of a house, with its files",
      description =
          "Its items stand in the catalogue beside all others; this is what they are made from.")
  @APIResponse(
      responseCode = "200",
      description = "The pack",
      content = @Content(schema = @Schema(implementation = HousePackView.class)))
  public Tagged pack(
      @Parameter(description = KitWords.HOUSE, example = KitExamples.HOUSE) @PathParam("house")
          String house,
      @Parameter(description = KitWords.PACK, example = KitExamples.PACK) @PathParam("pack")
          String pack) {
    houses.get(house);
    return HousePackView.tagged(packs.find(house, pack).orElseThrow(() -> new UnknownPack(pack)));
  }

  @PUT
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "putHousePack",
      summary = "Publish a catalogue pack of a house",
      description =
          "By the house's publisher, or by an admin. The files are checked as those of a folder are,"
              + " and every fault is told with its file, line and JSON pointer (422); nothing is"
              + " changed then. The pack is in use on this instance when the answer comes, and on"
              + " every other within seconds. The same files again change nothing. A microphone that"
              + " units of any house are can't be left out (409). "
              + KitWords.TAKEN_BACK
              + KitWords.CONDITIONS)
  @RequestBody(
      required = true,
      content =
          @Content(
              mediaType = MediaType.APPLICATION_JSON,
              schema = @Schema(implementation = PackTold.class),
              examples =
                  @ExampleObject(
                      name = "pack",
                      summary = "A screen that the house built",
                      value = KitExamples.FILES)))
  @APIResponse(
      responseCode = "200",
      description = "The pack as it is now",
      content = @Content(schema = @Schema(implementation = HousePackView.class)))
  @APIResponse(
      responseCode = "201",
      description = "The pack, which is new",
      content = @Content(schema = @Schema(implementation = HousePackView.class)))
  public Response put(
      @Parameter(description = KitWords.HOUSE, example = KitExamples.HOUSE) @PathParam("house")
          String house,
      @Parameter(description = KitWords.PACK, example = KitExamples.PACK) @PathParam("pack")
          String pack,
      @Context HttpHeaders headers,
      InputStream body) {
    Caller publisher = publisherOf(house);
    KitNames.checkPack(house, pack);
    PackTold told = reader.read(body, PackTold.class, Map.of("house", house, "id", pack));
    try {
      Put<HousePack> put = packs.put(publisher, house, pack, told.texts(), stands(headers, pack));
      return HousePackView.tagged(put.now()).put(put.isNew());
    } catch (FaultyPack faulty) {
      throw new InvalidRequest(
          ProblemType.RULE_BROKEN,
          faulty.findings().stream()
              .limit(MOST_FAULTS)
              .map(
                  finding ->
                      Fault.inFile(
                              finding.file(),
                              finding.line(),
                              finding.pointer(),
                              FaultCode.WRONG_FORM,
                              "This file can't be used as it is.")
                          .found(finding.found())
                          .allowed(finding.expected()))
              .toList());
    }
  }

  @DELETE
  @Operation(
      operationId = "withdrawHousePack",
      summary = "Take a catalogue pack of a house back",
      description =
          "By the house's publisher, or by an admin. Its items leave the catalogue on this instance"
              + " at once, and on every other within seconds. Refused while units are its"
              + " microphones, or other packs use it (409). Send its ETag as If-Match.")
  @APIResponse(
      responseCode = "200",
      description = "The pack as it was",
      content = @Content(schema = @Schema(implementation = HousePackView.class)))
  public Tagged withdraw(
      @Parameter(description = KitWords.HOUSE, example = KitExamples.HOUSE) @PathParam("house")
          String house,
      @Parameter(description = KitWords.PACK, example = KitExamples.PACK) @PathParam("pack")
          String pack,
      @Context HttpHeaders headers) {
    Caller publisher = publisherOf(house);
    return HousePackView.tagged(packs.withdraw(publisher, house, pack, stands(headers, pack)));
  }

  private Caller publisherOf(String house) {
    Caller publisher = caller.get();
    publisher.mustPublishFor(house);
    return publisher;
  }

  private static Precondition stands(HttpHeaders headers, String pack) {
    return ChangeConditions.of(headers).on(revision -> HousePackView.tag(pack, revision));
  }
}
