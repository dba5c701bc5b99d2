package org.standoff.rest.kit;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.kit.Caller;
import org.standoff.kit.Put;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.Houses;
import org.standoff.rest.http.ChangeConditions;
import org.standoff.rest.http.Page;
import org.standoff.rest.http.PageRequest;
import org.standoff.rest.http.Tagged;
import org.standoff.rest.json.RequestReader;
import org.standoff.rest.security.CurrentCaller;

/** Houses and the terms on which they lend. */
@Path("/v1/houses")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "kit", description = "Rental houses, their units, and who holds them when")
public class HousesResource {

  private final Houses houses;
  private final RequestReader reader;
  private final CurrentCaller caller;

  HousesResource(Houses houses, RequestReader reader, CurrentCaller caller) {
    this.houses = houses;
    this.reader = reader;
    this.caller = caller;
  }

  @GET
  @Operation(
      operationId = "listHouses",
      summary = "Houses that lend",
      description = "In the order of their ids, with their terms.")
  @Parameter(name = PageRequest.SIZE, in = ParameterIn.QUERY)
  @Parameter(name = PageRequest.TOKEN, in = ParameterIn.QUERY)
  public Page<HouseView> list(@Context UriInfo uri) {
    PageRequest page = PageRequest.of(uri);
    List<HouseView> all = houses.list().stream().map(HouseView::of).toList();
    return page.of(all, HouseView::id);
  }

  @GET
  @Path("/{house}")
  @Operation(
      operationId = "getHouse",
      summary = "A house and its terms",
      description = "Opening hours are by the clock on its wall, in its own time zone.")
  @APIResponse(
      responseCode = "200",
      description = "The house",
      content = @Content(schema = @Schema(implementation = HouseView.class)))
  public Tagged house(
      @Parameter(description = KitWords.HOUSE, example = KitExamples.HOUSE) @PathParam("house")
          String house) {
    return HouseView.tagged(houses.get(house));
  }

  @PUT
  @Path("/{house}")
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "putHouse",
      summary = "Tell the terms of a house",
      description =
          "By its publisher, or by an admin. Makes the house where it is new. Holds that stand keep"
              + " the periods that they were promised. The same terms again change nothing. "
              + KitWords.TAKEN_BACK
              + KitWords.CONDITIONS)
  @RequestBody(
      required = true,
      content =
          @Content(
              mediaType = MediaType.APPLICATION_JSON,
              schema = @Schema(implementation = HouseTold.class),
              examples =
                  @ExampleObject(
                      name = "terms",
                      summary = "Open on six days, a weekend for a day and a half",
                      value = KitExamples.TERMS)))
  @APIResponse(
      responseCode = "200",
      description = "The house as it is now",
      content = @Content(schema = @Schema(implementation = HouseView.class)))
  @APIResponse(
      responseCode = "201",
      description = "The house, which is new",
      content = @Content(schema = @Schema(implementation = HouseView.class)))
  public Response put(
      @Parameter(description = KitWords.HOUSE, example = KitExamples.HOUSE) @PathParam("house")
          String house,
      @Context HttpHeaders headers,
      InputStream body) {
    Caller publisher = caller.get();
    publisher.mustPublishFor(house);
    KitNames.checkHouse(house);
    HouseTerms wanted =
        HouseReader.read(house, reader.read(body, HouseTold.class, Map.of("id", house)));
    Put<HouseTerms> terms =
        houses.put(
            publisher,
            wanted,
            ChangeConditions.of(headers).on(revision -> HouseView.tag(house, revision)));
    return HouseView.tagged(terms.now()).put(terms.isNew());
  }
}
