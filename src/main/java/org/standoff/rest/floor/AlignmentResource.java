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
import org.standoff.answers.floor.AlignAnswer;
import org.standoff.answers.floor.AlignAnswers;
import org.standoff.answers.floor.AlignQuestion;
import org.standoff.rest.json.Asking;
import org.standoff.rest.json.Batch;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.problem.RequestId;

/** When one source reaches several microphones. */
@Path("/v1/floor/alignment")
@Tag(name = "floor")
public class AlignmentResource {
  private final Asking asking;
  private final AlignAnswers answers;

  AlignmentResource(Asking asking, AlignAnswers answers) {
    this.asking = asking;
    this.answers = answers;
  }

  /** By body. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "postFloorAlignment",
      summary = "Compute when one source reaches several microphones",
      description =
          "Paths, delays in milliseconds and samples, drift over the day's temperatures,"
              + " polarity by side and by the low-frequency sum, notches of the mono sum, delay"
              + " strategies side by side, equal paths of a pair, and how exactly to put a"
              + " microphone back. Ask for text/plain to get a line a microphone, for text/csv to"
              + " get a sheet."
              + Batch.WORDS)
  @RequestBody(
      required = true,
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = AlignQuestion.class),
            examples = {
              @ExampleObject(
                  name = "drums",
                  summary = "Two overheads and a close microphone on the drums",
                  value = FloorExamples.ALIGNMENT)
            })
      })
  @APIResponse(
      responseCode = "200",
      description = "Arrivals in order, and what delays would do",
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = AlignAnswer.class)),
        @Content(mediaType = CsvTable.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING)),
        @Content(mediaType = MediaType.TEXT_PLAIN, schema = @Schema(type = SchemaType.STRING))
      })
  public AlignAnswer post(InputStream body) {
    return byBody(body);
  }

  /** The same as a sheet. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(CsvTable.MEDIA_TYPE)
  @Operation(hidden = true)
  public String postSheet(InputStream body) {
    return AlignmentSheet.csv(byBody(body));
  }

  /** The same as lines. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.TEXT_PLAIN)
  @Operation(hidden = true)
  public String postLines(InputStream body) {
    return AlignmentSheet.lines(byBody(body));
  }

  /** Many questions, one a line. */
  @POST
  @Consumes(Batch.MEDIA_TYPE)
  @Produces(Batch.MEDIA_TYPE)
  @Operation(hidden = true)
  public byte[] batch(InputStream body, @Context RoutingContext request) {
    return asking.byLines(body, AlignQuestion.class, answers::answer, RequestId.of(request));
  }

  private AlignAnswer byBody(InputStream body) {
    return asking.byBody(body, AlignQuestion.class, answers::answer);
  }
}
