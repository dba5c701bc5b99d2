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
import org.standoff.answers.settings.SettingsAnswer;
import org.standoff.answers.settings.SettingsAnswers;
import org.standoff.answers.settings.SettingsQuestion;
import org.standoff.rest.http.Keeping;
import org.standoff.rest.http.ReadsQuery;
import org.standoff.rest.json.Asking;
import org.standoff.rest.json.Batch;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.openapi.QueryExample;
import org.standoff.rest.problem.RequestId;

/** Which microphone, pattern, pad, filter and gain. */
@Path("/v1/settings")
@Tag(name = "settings", description = "Which microphone, pattern, pad, filter and gain")
public class SettingsResource {
  private final Asking asking;
  private final SettingsAnswers answers;
  private final Keeping keeping;

  SettingsResource(Asking asking, SettingsAnswers answers, Keeping keeping) {
    this.asking = asking;
    this.answers = answers;
    this.keeping = keeping;
  }

  /** By query, for scripts. */
  @GET
  @ReadsQuery(SettingsQuestion.class)
  @QueryExample(name = "one-microphone", query = SettingsExamples.QUERY)
  @QueryExample(name = "a-told-level", query = SettingsExamples.QUERY_OF_A_TOLD_LEVEL)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "getSettings",
      summary = "Recommend settings, asked by a query string",
      description =
          "For scripts: the members of the question as parameters, those of a member after a dot, a"
              + " list by repetition. Items themselves and lists of objects go into a POST. As"
              + " application/json the whole answer, as text/csv a sheet, as text/plain one line of"
              + " names and values.")
  @APIResponse(
      responseCode = "200",
      description = "The recommended settings, best first, and why the others don't serve",
      content =
          @Content(
              mediaType = MediaType.APPLICATION_JSON,
              schema = @Schema(implementation = SettingsAnswer.class)))
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
          "Everything but source and preamp may be left out; the answer says what was"
              + " assumed. A reference is an id, or the item itself in the form of its catalogue"
              + " file. As application/json the whole answer, as text/csv a sheet with a row a"
              + " microphone, as text/plain the best in one line of names and values."
              + Batch.WORDS)
  @RequestBody(
      required = true,
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = SettingsQuestion.class),
            examples = {
              @ExampleObject(
                  name = "one-microphone",
                  summary = "One microphone, close",
                  value = SettingsExamples.ONE_MICROPHONE),
              @ExampleObject(
                  name = "a-told-level",
                  summary = "A level told with its spread, a pack to choose from",
                  value = SettingsExamples.A_TOLD_LEVEL),
              @ExampleObject(
                  name = "from-free-kit",
                  summary = "Only from what two houses have free",
                  value = SettingsExamples.FROM_FREE_KIT),
              @ExampleObject(
                  name = "with-neighbours",
                  summary = "What else it hears, in a room",
                  value = SettingsExamples.WITH_NEIGHBOURS),
              @ExampleObject(
                  name = "doubles",
                  summary = "A player who doubles, on one input",
                  value = SettingsExamples.DOUBLES),
              @ExampleObject(
                  name = "a-pair",
                  summary = "Two microphones on one gain, another placement in use",
                  value = SettingsExamples.A_PAIR),
              @ExampleObject(
                  name = "side-by-side",
                  summary = "Given settings, side by side",
                  value = SettingsExamples.SIDE_BY_SIDE),
              @ExampleObject(
                  name = "own-microphone",
                  summary = "A microphone that no catalogue has",
                  value = SettingsExamples.OWN_MICROPHONE)
            }),
        @Content(
            mediaType = Batch.MEDIA_TYPE,
            schema = @Schema(implementation = SettingsQuestion.class),
            examples =
                @ExampleObject(
                    name = "a-line",
                    summary = "One question a line",
                    value = SettingsExamples.ONE_MICROPHONE))
      })
  @APIResponse(
      responseCode = "200",
      description = "The recommended settings, best first, and why the others don't serve",
      content =
          @Content(
              mediaType = MediaType.APPLICATION_JSON,
              schema = @Schema(implementation = SettingsAnswer.class)))
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
    return asking.byQuery(uri.getQueryParameters(), SettingsQuestion.class, this::answer);
  }

  private SettingsAnswer answer(SettingsQuestion question) {
    if (question.available() != null) {
      keeping.forbid();
    }
    return answers.answer(question);
  }

  private SettingsAnswer byBody(InputStream body) {
    return asking.byBody(body, SettingsQuestion.class, answers::answer);
  }
}
