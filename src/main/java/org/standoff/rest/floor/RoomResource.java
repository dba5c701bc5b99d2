package org.standoff.rest.floor;

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
import org.standoff.answers.floor.RoomAnswer;
import org.standoff.answers.floor.RoomAnswers;
import org.standoff.answers.floor.RoomQuestion;
import org.standoff.rest.http.ReadsQuery;
import org.standoff.rest.json.Asking;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.openapi.QueryExample;

/** What a room does. */
@Path("/v1/floor/room")
@Tag(name = "floor")
public class RoomResource {
  private static final String WHAT =
      "Decay per octave, critical distance per pattern, Schroeder frequency, what material buys";

  private final Asking asking;
  private final RoomAnswers answers;

  RoomResource(Asking asking, RoomAnswers answers) {
    this.asking = asking;
    this.answers = answers;
  }

  /** By query, for scripts. */
  @GET
  @ReadsQuery(RoomQuestion.class)
  @QueryExample(name = "drapes", query = FloorExamples.ROOM_QUERY)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "getFloorRoom",
      summary = "Compute what a room does, asked by a query string",
      description =
          "For scripts: the members of the question as parameters. Ask for text/plain to get one"
              + " line, for text/csv to get a row an octave.")
  @APIResponse(
      responseCode = "200",
      description = WHAT,
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = RoomAnswer.class)),
        @Content(mediaType = CsvTable.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING)),
        @Content(mediaType = MediaType.TEXT_PLAIN, schema = @Schema(type = SchemaType.STRING))
      })
  public RoomAnswer get(@Context UriInfo uri) {
    return byQuery(uri);
  }

  /** The same as a sheet. */
  @GET
  @ReadsQuery(RoomQuestion.class)
  @Produces(CsvTable.MEDIA_TYPE)
  @Operation(hidden = true)
  public String getSheet(@Context UriInfo uri) {
    return RoomSheet.csv(byQuery(uri));
  }

  /** The same as one line. */
  @GET
  @ReadsQuery(RoomQuestion.class)
  @Produces(MediaType.TEXT_PLAIN)
  @Operation(hidden = true)
  public String getLine(@Context UriInfo uri) {
    return RoomSheet.line(byQuery(uri));
  }

  /** By body. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "postFloorRoom",
      summary = "Compute what a room does, and what material would buy",
      description = "For a room that stands in no catalogue, or a material of your own.")
  @RequestBody(
      required = true,
      content =
          @Content(
              mediaType = MediaType.APPLICATION_JSON,
              schema = @Schema(implementation = RoomQuestion.class),
              examples =
                  @ExampleObject(
                      name = "drapes",
                      summary = "Sixty square metres of drape in the boathouse",
                      value = FloorExamples.ROOM)))
  @APIResponse(
      responseCode = "200",
      description = WHAT,
      content =
          @Content(
              mediaType = MediaType.APPLICATION_JSON,
              schema = @Schema(implementation = RoomAnswer.class)))
  public RoomAnswer post(InputStream body) {
    return asking.byBody(body, RoomQuestion.class, answers::answer);
  }

  private RoomAnswer byQuery(UriInfo uri) {
    return asking.byQuery(uri.getQueryParameters(), RoomQuestion.class, answers::answer);
  }
}
