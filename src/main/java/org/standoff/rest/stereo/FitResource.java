package org.standoff.rest.stereo;

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
import org.standoff.answers.stereo.StereoFitAnswer;
import org.standoff.answers.stereo.StereoFitAnswers;
import org.standoff.answers.stereo.StereoFitQuestion;
import org.standoff.rest.json.Asking;
import org.standoff.rest.json.Batch;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.media.Svg;
import org.standoff.rest.problem.RequestId;

/** Which stereo pair spreads given players over the loudspeakers. */
@Path("/v1/stereo/fit")
@Tag(name = "stereo")
public class FitResource {
  private final Asking asking;
  private final StereoFitAnswers answers;

  FitResource(Asking asking, StereoFitAnswers answers) {
    this.asking = asking;
    this.answers = answers;
  }

  /** By body. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "postStereoFit",
      summary = "Find the pairs that spread players over the loudspeakers as wished",
      description =
          "Measures are solved, not picked from a grid: asked for its geometry, a solution"
              + " returns the wish. Ask for text/plain to get the best in one line, for text/csv to"
              + " get a sheet, for image/svg+xml to get a picture of the best."
              + Batch.WORDS)
  @RequestBody(
      required = true,
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = StereoFitQuestion.class),
            examples = {
              @ExampleObject(
                  name = "long-bar",
                  summary = "Three horns, a bar of 0.6 m",
                  value = StereoExamples.LONG_BAR),
              @ExampleObject(
                  name = "from-free-kit",
                  summary = "Only from what a house has free",
                  value = StereoExamples.FROM_FREE_KIT),
              @ExampleObject(
                  name = "short-bar",
                  summary = "The same with a bar of 0.2 m: what is out of reach",
                  value = StereoExamples.SHORT_BAR),
              @ExampleObject(
                  name = "line-of-players",
                  summary = "Five players on a line of 4 m, with limits on mono and room",
                  value = StereoExamples.LINE_OF_PLAYERS)
            })
      })
  @APIResponse(
      responseCode = "200",
      description = "Solutions, best first, and why the other layouts can't do it",
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = StereoFitAnswer.class)),
        @Content(mediaType = CsvTable.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING)),
        @Content(mediaType = MediaType.TEXT_PLAIN, schema = @Schema(type = SchemaType.STRING)),
        @Content(mediaType = Svg.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING))
      })
  public StereoFitAnswer post(InputStream body) {
    return byBody(body);
  }

  /** The same as a sheet. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(CsvTable.MEDIA_TYPE)
  @Operation(hidden = true)
  public String postSheet(InputStream body) {
    return FitSheet.csv(byBody(body));
  }

  /** The best in one line. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.TEXT_PLAIN)
  @Operation(hidden = true)
  public String postLine(InputStream body) {
    return FitSheet.line(byBody(body));
  }

  /** The best as a picture. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(Svg.MEDIA_TYPE)
  @Operation(hidden = true)
  public String postPicture(InputStream body) {
    return asking.byBody(
        body,
        StereoFitQuestion.class,
        question -> StereoPictures.draw(answers.best(question), question.picture()));
  }

  /** Many questions, one a line. */
  @POST
  @Consumes(Batch.MEDIA_TYPE)
  @Produces(Batch.MEDIA_TYPE)
  @Operation(hidden = true)
  public byte[] batch(InputStream body, @Context RoutingContext request) {
    return asking.byLines(body, StereoFitQuestion.class, answers::answer, RequestId.of(request));
  }

  private StereoFitAnswer byBody(InputStream body) {
    return asking.byBody(body, StereoFitQuestion.class, answers::answer);
  }
}
