package org.standoff.rest.settings;

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
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.answers.headroom.HeadroomAnswer;
import org.standoff.answers.headroom.HeadroomAnswers;
import org.standoff.answers.headroom.HeadroomQuestion;
import org.standoff.rest.http.ReadsQuery;
import org.standoff.rest.json.Asking;
import org.standoff.rest.json.Batch;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.openapi.QueryExample;
import org.standoff.rest.problem.RequestId;

/** How much headroom each stage keeps. */
@Path("/v1/headroom")
@Tag(name = "headroom", description = "How much headroom each stage keeps")
public class HeadroomResource {
  private final Asking asking;
  private final HeadroomAnswers answers;

  HeadroomResource(Asking asking, HeadroomAnswers answers) {
    this.asking = asking;
    this.answers = answers;
  }

  /** By query, for scripts. */
  @GET
  @ReadsQuery(HeadroomQuestion.class)
  @QueryExample(name = "a-told-peak", query = HeadroomExamples.QUERY)
  @QueryExample(name = "a-source", query = HeadroomExamples.QUERY_OF_A_SOURCE)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "getHeadroom",
      summary = "Compute headroom, asked by a query string",
      description =
          "For scripts: the members of the question as parameters, those of a member after a dot, a"
              + " list by repetition. Items themselves and lists of objects go into a POST. As"
              + " application/json the whole answer, as text/csv a sheet, as text/plain one line of"
              + " names and values.")
  @APIResponse(
      responseCode = "200",
      description = "The headroom of every stage, with every intermediate term",
      content =
          @Content(
              mediaType = MediaType.APPLICATION_JSON,
              schema = @Schema(implementation = HeadroomAnswer.class)))
  public HeadroomAnswer get(@Context UriInfo uri) {
    return byQuery(uri);
  }

  /** The same as a sheet. */
  @GET
  @ReadsQuery(HeadroomQuestion.class)
  @Produces(CsvTable.MEDIA_TYPE)
  @Operation(hidden = true)
  public String getSheet(@Context UriInfo uri) {
    return HeadroomSheet.csv(byQuery(uri));
  }

  /** The same as one line. */
  @GET
  @ReadsQuery(HeadroomQuestion.class)
  @Produces(MediaType.TEXT_PLAIN)
  @Operation(hidden = true)
  public String getLine(@Context UriInfo uri) {
    return HeadroomSheet.line(byQuery(uri));
  }

  /** By body. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "postHeadroom",
      summary = "Compute the headroom of a chain at told settings",
      description =
          "Give the peak at the capsule, or a source and a distance. Without a gain the"
              + " recommended one is set. As application/json the whole answer, as text/csv a sheet"
              + " with a row a stage, as text/plain one line of names and values."
              + Batch.WORDS)
  @RequestBody(
      required = true,
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = HeadroomQuestion.class),
            examples = {
              @ExampleObject(
                  name = "a-told-peak",
                  summary = "A peak told at the capsule",
                  value = HeadroomExamples.A_TOLD_PEAK),
              @ExampleObject(
                  name = "a-source",
                  summary = "A source at a distance",
                  value = HeadroomExamples.A_SOURCE)
            }),
        @Content(
            mediaType = Batch.MEDIA_TYPE,
            schema = @Schema(implementation = HeadroomQuestion.class),
            examples =
                @ExampleObject(
                    name = "a-line",
                    summary = "One question a line",
                    value = HeadroomExamples.A_TOLD_PEAK))
      })
  @APIResponse(
      responseCode = "200",
      description = "The headroom of every stage, with every intermediate term",
      content =
          @Content(
              mediaType = MediaType.APPLICATION_JSON,
              schema = @Schema(implementation = HeadroomAnswer.class)))
  public HeadroomAnswer post(InputStream body) {
    return byBody(body);
  }

  /** The same as a sheet. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(CsvTable.MEDIA_TYPE)
  @Operation(hidden = true)
  public String postSheet(InputStream body) {
    return HeadroomSheet.csv(byBody(body));
  }

  /** The same as one line. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.TEXT_PLAIN)
  @Operation(hidden = true)
  public String postLine(InputStream body) {
    return HeadroomSheet.line(byBody(body));
  }

  /** Many questions, one a line. */
  @POST
  @Consumes(Batch.MEDIA_TYPE)
  @Produces(Batch.MEDIA_TYPE)
  @Operation(hidden = true)
  public byte[] batch(InputStream body, @Context RoutingContext request) {
    return asking.byLines(body, HeadroomQuestion.class, answers::answer, RequestId.of(request));
  }

  private HeadroomAnswer byQuery(UriInfo uri) {
    return asking.byQuery(uri.getQueryParameters(), HeadroomQuestion.class, answers::answer);
  }

  private HeadroomAnswer byBody(InputStream body) {
    return asking.byBody(body, HeadroomQuestion.class, answers::answer);
  }
}
