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
import org.standoff.answers.floor.BleedAnswer;
import org.standoff.answers.floor.BleedAnswers;
import org.standoff.answers.floor.BleedQuestion;
import org.standoff.rest.json.Asking;
import org.standoff.rest.json.Batch;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.media.Svg;
import org.standoff.rest.problem.RequestId;

/** What every microphone hears of every source. */
@Path("/v1/floor/bleed")
@Tag(name = "floor", description = "What stands in a room and what it does to each other")
public class BleedResource {
  private final Asking asking;
  private final BleedAnswers answers;

  BleedResource(Asking asking, BleedAnswers answers) {
    this.asking = asking;
    this.answers = answers;
  }

  /** By body. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "postFloorBleed",
      summary = "Compute what every microphone hears of every source, and what would help",
      description =
          "Direct sound, reflections of the box and the late field, per cell of the matrix;"
              + " wanted against unwanted, offenders, remedies that can work, combs of shared"
              + " sources. Ask for text/plain to get a line a microphone, for text/csv to get a row"
              + " a cell, for image/svg+xml to get a picture."
              + Batch.WORDS)
  @RequestBody(
      required = true,
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = BleedQuestion.class),
            examples = {
              @ExampleObject(
                  name = "violin-and-drums",
                  summary = "The violin spot of the demo among its loudest neighbours",
                  value = FloorExamples.VIOLIN_AND_DRUMS),
              @ExampleObject(
                  name = "by-hand",
                  summary =
                      "The same as a sum by hand has it: points alike to all sides, no reflections",
                  value = FloorExamples.BY_HAND),
              @ExampleObject(
                  name = "inline",
                  summary = "Sources and a barrier told one by one",
                  value = FloorExamples.INLINE)
            })
      })
  @APIResponse(
      responseCode = "200",
      description =
          "The matrix, and per microphone what is wanted, what is not, and what would help",
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = BleedAnswer.class)),
        @Content(mediaType = CsvTable.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING)),
        @Content(mediaType = MediaType.TEXT_PLAIN, schema = @Schema(type = SchemaType.STRING)),
        @Content(mediaType = Svg.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING))
      })
  public BleedAnswer post(InputStream body) {
    return byBody(body);
  }

  /** The same as a sheet. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(CsvTable.MEDIA_TYPE)
  @Operation(hidden = true)
  public String postSheet(InputStream body) {
    return BleedSheet.csv(byBody(body));
  }

  /** The same as lines. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.TEXT_PLAIN)
  @Operation(hidden = true)
  public String postLines(InputStream body) {
    return BleedSheet.lines(byBody(body));
  }

  /** The same as a picture. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(Svg.MEDIA_TYPE)
  @Operation(hidden = true)
  public String postPicture(InputStream body) {
    return asking.byBody(
        body,
        BleedQuestion.class,
        question -> FloorPictures.draw(answers.answer(question), question.picture()));
  }

  /** Many questions, one a line. */
  @POST
  @Consumes(Batch.MEDIA_TYPE)
  @Produces(Batch.MEDIA_TYPE)
  @Operation(hidden = true)
  public byte[] batch(InputStream body, @Context RoutingContext request) {
    return asking.byLines(body, BleedQuestion.class, answers::answer, RequestId.of(request));
  }

  private BleedAnswer byBody(InputStream body) {
    return asking.byBody(body, BleedQuestion.class, answers::answer);
  }
}
