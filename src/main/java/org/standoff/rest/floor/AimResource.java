package org.standoff.rest.floor;

import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import java.io.InputStream;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.answers.floor.AimAnswer;
import org.standoff.answers.floor.AimAnswers;
import org.standoff.answers.floor.AimQuestion;
import org.standoff.rest.json.Asking;
import org.standoff.rest.json.Batch;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.problem.RequestId;

/** How microphones are best aimed. */
@Path("/v1/floor/aim")
@Tag(name = "floor")
public class AimResource {
  private final Asking asking;
  private final AimAnswers answers;

  AimResource(Asking asking, AimAnswers answers) {
    this.asking = asking;
    this.answers = answers;
  }

  /** By body. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "postFloorAim",
      summary = "Search the aims that keep out most of the unwanted",
      description =
          "Over all neighbours at once, in three dimensions, within limits of angle, reach,"
              + " pattern and barrier place, while the wanted loses at most so much. Tells when the"
              + " room makes it pointless. Ask for text/plain to get a line a microphone, for"
              + " text/csv to get a sheet."
              + Batch.WORDS)
  @RequestBody(
      required = true,
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = AimQuestion.class),
            examples = {
              @ExampleObject(
                  name = "two-spots",
                  summary =
                      "Two spots between trumpet and drums, with a gobo that may go to either of two places",
                  value = FloorExamples.AIM)
            })
      })
  @APIResponse(
      responseCode = "200",
      description = "Today, the best, and the best of another basin",
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = AimAnswer.class)),
        @Content(mediaType = CsvTable.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING)),
        @Content(mediaType = MediaType.TEXT_PLAIN, schema = @Schema(type = SchemaType.STRING))
      })
  public AimAnswer post(InputStream body) {
    return byBody(body);
  }

  /** The same as a sheet. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(CsvTable.MEDIA_TYPE)
  @Operation(hidden = true)
  public String postSheet(InputStream body) {
    return AimSheet.csv(byBody(body));
  }

  /** The same as lines. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.TEXT_PLAIN)
  @Operation(hidden = true)
  public String postLines(InputStream body) {
    return AimSheet.lines(byBody(body));
  }

  /** Many questions, one a line. */
  @POST
  @Consumes(Batch.MEDIA_TYPE)
  @Produces(Batch.MEDIA_TYPE)
  @Operation(hidden = true)
  public byte[] batch(InputStream body, @Context RoutingContext request) {
    return asking.byLines(body, AimQuestion.class, answers::answer, RequestId.of(request));
  }

  private AimAnswer byBody(InputStream body) {
    return asking.byBody(body, AimQuestion.class, answers::answer);
  }
}
