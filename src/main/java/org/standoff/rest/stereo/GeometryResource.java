package org.standoff.rest.stereo;

import io.vertx.ext.web.RoutingContext;
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
import org.standoff.answers.stereo.GeometryAnswer;
import org.standoff.answers.stereo.GeometryAnswers;
import org.standoff.answers.stereo.GeometryQuestion;
import org.standoff.rest.http.ReadsQuery;
import org.standoff.rest.json.Asking;
import org.standoff.rest.json.Batch;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.media.Svg;
import org.standoff.rest.openapi.QueryExample;
import org.standoff.rest.problem.RequestId;

/** What a stereo pair makes of given sources. */
@Path("/v1/stereo/geometry")
@Tag(name = "stereo", description = "Stereo pairs: what they make of sources, and which fits")
public class GeometryResource {
  private static final String WHAT =
      "Differences, images under each listening model, mono, room and setting-out";

  private final Asking asking;
  private final GeometryAnswers answers;

  GeometryResource(Asking asking, GeometryAnswers answers) {
    this.asking = asking;
    this.answers = answers;
  }

  /** By query, for scripts. */
  @GET
  @ReadsQuery(GeometryQuestion.class)
  @QueryExample(name = "two-sources", query = StereoExamples.QUERY)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "getStereoGeometry",
      summary = "Compute what a pair makes of sources, asked by a query string",
      description =
          "For scripts: the members of the question as parameters; repeat azimuth_deg for more"
              + " sources. Ask for text/plain to get a line a source, for text/csv to get a sheet,"
              + " for image/svg+xml to get a picture.")
  @APIResponse(
      responseCode = "200",
      description = WHAT,
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = GeometryAnswer.class)),
        @Content(mediaType = CsvTable.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING)),
        @Content(mediaType = MediaType.TEXT_PLAIN, schema = @Schema(type = SchemaType.STRING)),
        @Content(mediaType = Svg.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING))
      })
  public GeometryAnswer get(@Context UriInfo uri) {
    return byQuery(uri);
  }

  /** The same as a sheet. */
  @GET
  @ReadsQuery(GeometryQuestion.class)
  @Produces(CsvTable.MEDIA_TYPE)
  @Operation(hidden = true)
  public String getSheet(@Context UriInfo uri) {
    return GeometrySheet.csv(byQuery(uri));
  }

  /** The same as lines. */
  @GET
  @ReadsQuery(GeometryQuestion.class)
  @Produces(MediaType.TEXT_PLAIN)
  @Operation(hidden = true)
  public String getLines(@Context UriInfo uri) {
    return GeometrySheet.lines(byQuery(uri));
  }

  /** The same as a picture. */
  @GET
  @ReadsQuery(GeometryQuestion.class)
  @Produces(Svg.MEDIA_TYPE)
  @Operation(hidden = true)
  public String getPicture(@Context UriInfo uri) {
    return asking.byQuery(uri.getQueryParameters(), GeometryQuestion.class, this::picture);
  }

  /** By body. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "postStereoGeometry",
      summary = "Compute what a pair makes of sources",
      description =
          "Exact level and time differences for sources at a finite distance, images under"
              + " each listening model, recording angle, mono sum, diffuse correlation, direct over"
              + " late field, and what tape and protractor need. Ask for text/plain to get a line a"
              + " source, for text/csv to get a sheet, for image/svg+xml to get a picture."
              + Batch.WORDS)
  @RequestBody(
      required = true,
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = GeometryQuestion.class),
            examples = {
              @ExampleObject(
                  name = "near-coincident",
                  summary = "17 cm and 110°, two sources at 2.5 m",
                  value = StereoExamples.NEAR_COINCIDENT),
              @ExampleObject(
                  name = "horn-line",
                  summary = "Three horns before a bar of 0.4 m",
                  value = StereoExamples.HORN_LINE),
              @ExampleObject(
                  name = "crossed-figure-8s",
                  summary = "The same horns, and the drums in the rear lobe",
                  value = StereoExamples.CROSSED_FIGURE_8S),
              @ExampleObject(
                  name = "capsules",
                  summary = "Capsules that stand in no catalogue",
                  value = StereoExamples.CAPSULES)
            })
      })
  @APIResponse(
      responseCode = "200",
      description = WHAT,
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = GeometryAnswer.class)),
        @Content(mediaType = CsvTable.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING)),
        @Content(mediaType = MediaType.TEXT_PLAIN, schema = @Schema(type = SchemaType.STRING)),
        @Content(mediaType = Svg.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING))
      })
  public GeometryAnswer post(InputStream body) {
    return byBody(body);
  }

  /** The same as a sheet. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(CsvTable.MEDIA_TYPE)
  @Operation(hidden = true)
  public String postSheet(InputStream body) {
    return GeometrySheet.csv(byBody(body));
  }

  /** The same as lines. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.TEXT_PLAIN)
  @Operation(hidden = true)
  public String postLines(InputStream body) {
    return GeometrySheet.lines(byBody(body));
  }

  /** The same as a picture. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(Svg.MEDIA_TYPE)
  @Operation(hidden = true)
  public String postPicture(InputStream body) {
    return asking.byBody(body, GeometryQuestion.class, this::picture);
  }

  /** Many questions, one a line. */
  @POST
  @Consumes(Batch.MEDIA_TYPE)
  @Produces(Batch.MEDIA_TYPE)
  @Operation(hidden = true)
  public byte[] batch(InputStream body, @Context RoutingContext request) {
    return asking.byLines(body, GeometryQuestion.class, answers::answer, RequestId.of(request));
  }

  private String picture(GeometryQuestion question) {
    return StereoPictures.draw(answers.answer(question), question.picture());
  }

  private GeometryAnswer byQuery(UriInfo uri) {
    return asking.byQuery(uri.getQueryParameters(), GeometryQuestion.class, answers::answer);
  }

  private GeometryAnswer byBody(InputStream body) {
    return asking.byBody(body, GeometryQuestion.class, answers::answer);
  }
}
