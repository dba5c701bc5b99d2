package org.standoff.rest.kit;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.io.InputStream;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.answers.kit.Availability;
import org.standoff.answers.kit.AvailabilityAnswer;
import org.standoff.answers.kit.AvailabilityQuestion;
import org.standoff.rest.http.Keeping;
import org.standoff.rest.http.ReadsQuery;
import org.standoff.rest.json.Asking;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.openapi.QueryExample;

/** What is free. */
@Path("/v1/availability")
@Tag(name = "kit", description = "Rental houses, their units, and who holds them when")
public class AvailabilityResource {
  private static final String WHAT =
      "What each house has of each line, when what is short is free, what could stand in, and how to"
          + " get it all from few houses or for little";

  private final Asking asking;
  private final Availability availability;
  private final Keeping keeping;

  AvailabilityResource(Asking asking, Availability availability, Keeping keeping) {
    this.asking = asking;
    this.availability = availability;
    this.keeping = keeping;
  }

  /** One model, by query. */
  @GET
  @ReadsQuery(AvailabilityQuestion.class)
  @QueryExample(name = "matched-pair", query = AvailabilityExamples.QUERY)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "getAvailability",
      summary = "Ask whether a model is free, by a query string",
      description =
          "For scripts: the members of the question as parameters. A plus sign in an offset is"
              + " written %2B. Ask for text/csv to get a row a house.")
  @APIResponse(
      responseCode = "200",
      description = WHAT,
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = AvailabilityAnswer.class)),
        @Content(mediaType = CsvTable.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING))
      })
  public AvailabilityAnswer get(@Context UriInfo uri) {
    return byQuery(uri);
  }

  /** The same as a sheet. */
  @GET
  @ReadsQuery(AvailabilityQuestion.class)
  @Produces(CsvTable.MEDIA_TYPE)
  @Operation(hidden = true)
  public String getSheet(@Context UriInfo uri) {
    return AvailabilitySheet.csv(byQuery(uri));
  }

  /** Several models. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "postAvailability",
      summary = "Ask which units are free in a period, house by house",
      description =
          "A unit is busy from its collection to its return and the house's turn-round after it, and"
              + " who asks needs it for as long. Matched groups leave whole or not at all. What a"
              + " desk should have brought back by now is not free. Splits take as much as there is,"
              + " from houses that are open when kit leaves and can take it back when it returns;"
              + " charges in different currencies are never added. Days charged are those of the"
              + " house's calendar that the period touches; its least charge holds for the whole"
              + " hold. The next free period is looked for 92 days ahead. The answer holds for the"
              + " moment: a hold alone promises anything. Ask for text/csv to get a row a line and"
              + " house.")
  @RequestBody(
      required = true,
      content =
          @Content(
              mediaType = MediaType.APPLICATION_JSON,
              schema = @Schema(implementation = AvailabilityQuestion.class),
              examples =
                  @ExampleObject(
                      name = "session",
                      summary = "A session's kit from two houses",
                      value = AvailabilityExamples.SESSION)))
  @APIResponse(
      responseCode = "200",
      description = WHAT,
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = AvailabilityAnswer.class)),
        @Content(mediaType = CsvTable.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING))
      })
  public AvailabilityAnswer post(InputStream body) {
    return asking.byBody(body, AvailabilityQuestion.class, availability::answer);
  }

  /** The same as a sheet. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(CsvTable.MEDIA_TYPE)
  @Operation(hidden = true)
  public String postSheet(InputStream body) {
    return AvailabilitySheet.csv(
        asking.byBody(body, AvailabilityQuestion.class, availability::answer));
  }

  private AvailabilityAnswer byQuery(UriInfo uri) {
    keeping.forbid();
    return asking.byQuery(
        uri.getQueryParameters(), AvailabilityQuestion.class, availability::answer);
  }
}
