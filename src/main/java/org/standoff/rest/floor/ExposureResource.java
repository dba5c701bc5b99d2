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
import org.standoff.answers.floor.ExposureAnswer;
import org.standoff.answers.floor.ExposureAnswers;
import org.standoff.answers.floor.ExposureQuestion;
import org.standoff.rest.json.Asking;
import org.standoff.rest.json.Batch;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.problem.RequestId;

/** What a day does to the ears at each seat. */
@Path("/v1/floor/exposure")
@Tag(name = "floor")
public class ExposureResource {
  private final Asking asking;
  private final ExposureAnswers answers;

  ExposureResource(Asking asking, ExposureAnswers answers) {
    this.asking = asking;
    this.answers = answers;
  }

  /** By body. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "postFloorExposure",
      summary = "Estimate what a day does to the ears at each seat",
      description =
          "Level per part of the day, the daily exposure level, the dose of each published"
              + " rule by itself, the peak, and cautions. An estimate with its range: no"
              + " measurement, no statement of compliance. Ask for text/plain to get a line a seat,"
              + " for text/csv to get a sheet."
              + Batch.WORDS)
  @RequestBody(
      required = true,
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = ExposureQuestion.class),
            examples = {
              @ExampleObject(
                  name = "day",
                  summary = "A day of loud and soft pieces at two seats",
                  value = FloorExamples.EXPOSURE)
            })
      })
  @APIResponse(
      responseCode = "200",
      description = "Levels, doses and peaks at each seat",
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = ExposureAnswer.class)),
        @Content(mediaType = CsvTable.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING)),
        @Content(mediaType = MediaType.TEXT_PLAIN, schema = @Schema(type = SchemaType.STRING))
      })
  public ExposureAnswer post(InputStream body) {
    return byBody(body);
  }

  /** The same as a sheet. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(CsvTable.MEDIA_TYPE)
  @Operation(hidden = true)
  public String postSheet(InputStream body) {
    return ExposureSheet.csv(byBody(body));
  }

  /** The same as lines. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.TEXT_PLAIN)
  @Operation(hidden = true)
  public String postLines(InputStream body) {
    return ExposureSheet.lines(byBody(body));
  }

  /** Many questions, one a line. */
  @POST
  @Consumes(Batch.MEDIA_TYPE)
  @Produces(Batch.MEDIA_TYPE)
  @Operation(hidden = true)
  public byte[] batch(InputStream body, @Context RoutingContext request) {
    return asking.byLines(body, ExposureQuestion.class, answers::answer, RequestId.of(request));
  }

  private ExposureAnswer byBody(InputStream body) {
    return asking.byBody(body, ExposureQuestion.class, answers::answer);
  }
}
