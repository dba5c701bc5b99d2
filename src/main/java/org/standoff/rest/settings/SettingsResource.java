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
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.answers.settings.SettingsAnswer;
import org.standoff.answers.settings.SettingsAnswers;
import org.standoff.answers.settings.SettingsQuestion;
import org.standoff.rest.http.ReadsQuery;
import org.standoff.rest.json.Asking;
import org.standoff.rest.json.Batch;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.problem.RequestId;

/** Which microphone, pattern, pad, filter and gain. */
@Path("/v1/settings")
@Tag(name = "settings", description = "Which microphone, pattern, pad, filter and gain")
public class SettingsResource {
  private final Asking asking;
  private final SettingsAnswers answers;

  SettingsResource(Asking asking, SettingsAnswers answers) {
    this.asking = asking;
    this.answers = answers;
  }

  /** By query, for scripts. */
  @GET
  @ReadsQuery(SettingsQuestion.class)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "getSettings",
      summary = "Recommend settings, asked by a query string",
      description =
          "For scripts: the members of the question as parameters. Ask for text/plain to get one"
              + " line, for text/csv to get a sheet.")
  @APIResponse(
      responseCode = "200",
      description = "The recommended settings, best first, and why the others don't serve",
      content = @Content(schema = @Schema(implementation = SettingsAnswer.class)))
  public SettingsAnswer get(@Context UriInfo uri) {
    return byQuery(uri);
  }

  /** The same as a sheet. */
  @GET
  @ReadsQuery(SettingsQuestion.class)
  @Produces(CsvTable.MEDIA_TYPE)
  @Operation(hidden = true)
  public String getSheet(@Context UriInfo uri) {
    return SettingsSheet.csv(byQuery(uri));
  }

  /** The same as one line. */
  @GET
  @ReadsQuery(SettingsQuestion.class)
  @Produces(MediaType.TEXT_PLAIN)
  @Operation(hidden = true)
  public String getLine(@Context UriInfo uri) {
    return SettingsSheet.line(byQuery(uri));
  }

  /** By body. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "postSettings",
      summary = "Recommend settings for a source and a distance",
      description =
          "Everything but source and preamp may be left out; the answer says what was assumed."
              + " Ask for text/plain to get one line, for text/csv to get a sheet.")
  @RequestBody(
      required = true,
      content = @Content(schema = @Schema(implementation = SettingsQuestion.class)))
  @APIResponse(
      responseCode = "200",
      description = "The recommended settings, best first, and why the others don't serve",
      content = @Content(schema = @Schema(implementation = SettingsAnswer.class)))
  public SettingsAnswer post(InputStream body) {
    return byBody(body);
  }

  /** The same as a sheet. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(CsvTable.MEDIA_TYPE)
  @Operation(hidden = true)
  public String postSheet(InputStream body) {
    return SettingsSheet.csv(byBody(body));
  }

  /** The same as one line. */
  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.TEXT_PLAIN)
  @Operation(hidden = true)
  public String postLine(InputStream body) {
    return SettingsSheet.line(byBody(body));
  }

  /** Many questions, one a line. */
  @POST
  @Consumes(Batch.MEDIA_TYPE)
  @Produces(Batch.MEDIA_TYPE)
  @Operation(hidden = true)
  public byte[] batch(InputStream body, @Context RoutingContext request) {
    return asking.byLines(body, SettingsQuestion.class, answers::answer, RequestId.of(request));
  }

  private SettingsAnswer byQuery(UriInfo uri) {
    return asking.byQuery(uri.getQueryParameters(), SettingsQuestion.class, answers::answer);
  }

  private SettingsAnswer byBody(InputStream body) {
    return asking.byBody(body, SettingsQuestion.class, answers::answer);
  }
}
