package org.standoff.rest.kit;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.HeaderParam;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.UriInfo;
import java.io.InputStream;
import java.net.URI;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.headers.Header;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.kit.Caller;
import org.standoff.kit.hold.HoldWish;
import org.standoff.kit.hold.Holds;
import org.standoff.kit.hold.Receipt;
import org.standoff.rest.http.FormOfState;
import org.standoff.rest.http.Page;
import org.standoff.rest.http.PageRequest;
import org.standoff.rest.http.ReadsQuery;
import org.standoff.rest.json.RequestReader;
import org.standoff.rest.openapi.QueryExample;
import org.standoff.rest.problem.Problem;
import org.standoff.rest.security.CurrentCaller;

/** Holds: made, and looked for. */
@Path("/v1/holds")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "kit")
public class HoldsResource {

  private static final Set<String> PAGING = Set.of(PageRequest.SIZE, PageRequest.TOKEN);

  private final Holds holds;
  private final HoldRetries retries;
  private final HoldRefusals refusals;
  private final RequestReader reader;
  private final CurrentCaller caller;

  HoldsResource(
      Holds holds,
      HoldRetries retries,
      HoldRefusals refusals,
      RequestReader reader,
      CurrentCaller caller) {
    this.holds = holds;
    this.retries = retries;
    this.refusals = refusals;
    this.reader = reader;
    this.caller = caller;
  }

  @GET
  @ReadsQuery(HoldQuery.class)
  @QueryExample(name = "of-a-house", query = HoldExamples.SEARCH)
  @Operation(
      operationId = "listHolds",
      summary = "Holds by house, reference, period and state",
      description = "In the order in which they were made. " + HoldWords.PRIVACY)
  public Page<HoldView> list(@Context UriInfo uri) {
    Caller asking = caller.get();
    PageRequest page = PageRequest.of(uri);
    HoldQuery query = reader.readQuery(uri.getQueryParameters(), HoldQuery.class, PAGING);
    List<HoldView> found =
        holds
            .list(
                asking,
                query.search(),
                Optional.ofNullable(page.after()).map(HoldPath::ofPage),
                page.size() + 1)
            .stream()
            .map(HoldView::of)
            .toList();
    return page.of(found, HoldView::id);
  }

  @POST
  @Consumes(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "postHold",
      summary = "Hold units",
      description =
          "All that is wanted or nothing, in one house or several. Matched groups leave whole. The"
              + " hold is tentative: it falls unless it is confirmed in time. Where units are short:"
              + " 409 with a shortfall for each line that is; or, where the wish says second, a hold"
              + " that waits for them. By a booker, for its own desk.")
  @RequestBody(
      required = true,
      content =
          @Content(
              mediaType = MediaType.APPLICATION_JSON,
              schema = @Schema(implementation = HoldTold.class),
              examples = {
                @ExampleObject(
                    name = "session",
                    summary = "A matched pair and one more for a session",
                    value = HoldExamples.WISH),
                @ExampleObject(
                    name = "second",
                    summary = "Both ribbons, in line behind whoever has them",
                    value = HoldExamples.SECOND)
              }))
  @APIResponse(
      responseCode = "201",
      description = "The hold; the first answer again where the key came before",
      headers = {
        @Header(
            name = HttpHeaders.LOCATION,
            description = "Where the hold is",
            schema = @Schema(implementation = String.class)),
        @Header(
            name = HttpHeaders.ETAG,
            description = "Entity tag of the hold as it was made",
            schema = @Schema(implementation = String.class))
      },
      content = @Content(schema = @Schema(implementation = HoldView.class)))
  @APIResponse(
      responseCode = "200",
      description = "What a dry run would hold",
      content = @Content(schema = @Schema(implementation = HoldView.class)))
  @APIResponse(
      responseCode = "409",
      description =
          "Units are short, the reference is taken, or a request with the same key is being answered",
      content =
          @Content(
              mediaType = Problem.MEDIA_TYPE,
              schema = @Schema(allOf = {Problem.class, HoldClash.class})))
  public Response hold(
      @Parameter(description = HoldWords.KEY_ABOUT, example = HoldExamples.KEY)
          @HeaderParam(HoldWords.KEY)
          String key,
      @Parameter(
              description = "true: answer as ever, but hold nothing",
              schema = @Schema(type = SchemaType.BOOLEAN, defaultValue = "false"))
          @QueryParam(KitWords.DRY_RUN_NAME)
          String dryRun,
      InputStream body) {
    Caller desk = caller.get();
    HoldTold told = reader.read(body, HoldTold.class);
    HoldWish wish = told.wish();
    if (Flag.of(KitWords.DRY_RUN_NAME, dryRun)) {
      HoldView rehearsed = HoldView.of(refusals.told(told, () -> holds.rehearse(desk, wish)));
      return Response.ok(rehearsed, MediaType.APPLICATION_JSON_TYPE).build();
    }
    Receipt receipt = refusals.told(told, () -> holds.holdOnce(desk, wish, retries.of(key, told)));
    return made(receipt);
  }

  /** A hold that was just made, or was when the key came first, has the first revision. */
  private static Response made(Receipt receipt) {
    UUID hold = receipt.hold();
    return Response.created(URI.create(HoldView.PATH + hold))
        .entity(new FormOfState(HoldView.tag(hold, 1), receipt.answer()))
        .type(MediaType.APPLICATION_JSON_TYPE)
        .build();
  }
}
