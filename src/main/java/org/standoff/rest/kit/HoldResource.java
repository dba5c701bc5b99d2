package org.standoff.rest.kit;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.POST;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import java.io.InputStream;
import java.util.UUID;
import java.util.function.Supplier;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.kit.Caller;
import org.standoff.kit.Precondition;
import org.standoff.kit.hold.DeskSteps;
import org.standoff.kit.hold.Hold;
import org.standoff.kit.hold.Holds;
import org.standoff.kit.hold.HouseSteps;
import org.standoff.rest.http.ChangeConditions;
import org.standoff.rest.http.FormOfState;
import org.standoff.rest.http.WholeBody;
import org.standoff.rest.json.RequestReader;
import org.standoff.rest.media.CalendarText;
import org.standoff.rest.security.CurrentCaller;

/** One hold, and the steps that it takes. */
@Path("/v1/holds/{hold}")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "kit")
public class HoldResource {

  private static final String AS_IT_IS_NOW = "The hold as it is now";

  private final Holds holds;
  private final DeskSteps desk;
  private final HouseSteps house;
  private final HoldRefusals refusals;
  private final RequestReader reader;
  private final CurrentCaller caller;

  HoldResource(
      Holds holds,
      DeskSteps desk,
      HouseSteps house,
      HoldRefusals refusals,
      RequestReader reader,
      CurrentCaller caller) {
    this.holds = holds;
    this.desk = desk;
    this.house = house;
    this.refusals = refusals;
    this.reader = reader;
    this.caller = caller;
  }

  /** A step with a hold. */
  private interface Step {
    Hold take(Caller caller, UUID hold, Precondition stands);
  }

  @GET
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "getHold",
      summary = "A hold",
      description = HoldWords.PRIVACY + " As text/calendar it is an event for a diary (RFC 5545).")
  @APIResponse(
      responseCode = "200",
      description = "The hold",
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = HoldView.class)),
        @Content(mediaType = CalendarText.MEDIA_TYPE, schema = @Schema(type = SchemaType.STRING))
      })
  public FormOfState hold(
      @Parameter(description = HoldWords.HOLD, example = HoldExamples.TENTATIVE) @PathParam("hold")
          String hold) {
    return HoldView.tagged(found(hold));
  }

  /** The same for a diary. */
  @GET
  @Produces(CalendarText.MEDIA_TYPE)
  @Operation(hidden = true)
  public FormOfState holdInDiary(@PathParam("hold") String hold) {
    Hold found = found(hold);
    return new FormOfState(HoldView.tag(found.id(), found.revision()), HoldCalendar.text(found));
  }

  @POST
  @Path("/confirm")
  @Parameter(
      name = HttpHeaders.IF_MATCH,
      in = ParameterIn.HEADER,
      description = HoldWords.IF_MATCH_ABOUT,
      example = HoldExamples.ANY,
      schema = @Schema(implementation = String.class))
  @Operation(
      operationId = "confirmHold",
      summary = "Make a tentative hold certain",
      description = "It falls no more. By the desk that holds." + HoldWords.CONDITION)
  @APIResponse(
      responseCode = "200",
      description = AS_IT_IS_NOW,
      content = @Content(schema = @Schema(implementation = HoldView.class)))
  public FormOfState confirm(
      @Parameter(description = HoldWords.HOLD, example = HoldExamples.TENTATIVE) @PathParam("hold")
          String hold,
      @Context HttpHeaders headers) {
    return step(hold, headers, desk::confirm);
  }

  @POST
  @Path("/release")
  @Parameter(
      name = HttpHeaders.IF_MATCH,
      in = ParameterIn.HEADER,
      description = HoldWords.IF_MATCH_ABOUT,
      example = HoldExamples.ANY,
      schema = @Schema(implementation = String.class))
  @Operation(
      operationId = "releaseHold",
      summary = "Give a hold up",
      description =
          "Its units go to those who wait for them, in the order in which they came. What was"
              + " collected can't be released: of a hold that is out, the units that nobody"
              + " collected are given up, and it is returned once nothing is out. By the desk that"
              + " holds."
              + HoldWords.CONDITION)
  @APIResponse(
      responseCode = "200",
      description = AS_IT_IS_NOW,
      content = @Content(schema = @Schema(implementation = HoldView.class)))
  public FormOfState release(
      @Parameter(description = HoldWords.HOLD, example = HoldExamples.TENTATIVE) @PathParam("hold")
          String hold,
      @Context HttpHeaders headers) {
    return step(hold, headers, desk::release);
  }

  @POST
  @Path("/extend")
  @Consumes(MediaType.APPLICATION_JSON)
  @Parameter(
      name = HttpHeaders.IF_MATCH,
      in = ParameterIn.HEADER,
      description = HoldWords.IF_MATCH_ABOUT,
      example = HoldExamples.ANY,
      schema = @Schema(implementation = String.class))
  @Operation(
      operationId = "extendHold",
      summary = "Move the end of a hold",
      description =
          "It keeps its units. Where others have some of them in the time on top: 409 with each of"
              + " them and when. By the desk that holds."
              + HoldWords.CONDITION)
  @RequestBody(
      required = true,
      content =
          @Content(
              mediaType = MediaType.APPLICATION_JSON,
              schema = @Schema(implementation = ExtensionTold.class),
              examples =
                  @ExampleObject(
                      name = "a-day-more",
                      summary = "Until the next morning",
                      value = HoldExamples.EXTENSION)))
  @APIResponse(
      responseCode = "200",
      description = AS_IT_IS_NOW,
      content = @Content(schema = @Schema(implementation = HoldView.class)))
  public FormOfState extend(
      @Parameter(description = HoldWords.HOLD, example = HoldExamples.CONFIRMED) @PathParam("hold")
          String hold,
      @Context HttpHeaders headers,
      InputStream body) {
    ExtensionTold told = reader.read(body, ExtensionTold.class);
    return step(
        hold,
        headers,
        (asking, id, stands) ->
            desk.extend(asking, id, AskedTimes.moment(told.to(), "/to"), stands));
  }

  @POST
  @Path("/check-out")
  @Parameter(
      name = HttpHeaders.IF_MATCH,
      in = ParameterIn.HEADER,
      description = HoldWords.IF_MATCH_ABOUT,
      example = HoldExamples.ANY,
      schema = @Schema(implementation = String.class))
  @Operation(
      operationId = "checkOutHold",
      summary = "Hand the units over",
      description =
          "All that the caller's house has in the hold, but for units in repair, which can follow"
              + " once they are mended. Collected early, they are busy from now on."
              + " Where one is not there yet: 409 with the hold that has it. By a publisher."
              + HoldWords.CONDITION)
  @APIResponse(
      responseCode = "200",
      description = AS_IT_IS_NOW,
      content = @Content(schema = @Schema(implementation = HoldView.class)))
  public FormOfState checkOut(
      @Parameter(description = HoldWords.HOLD, example = HoldExamples.CONFIRMED) @PathParam("hold")
          String hold,
      @Context HttpHeaders headers) {
    return step(hold, headers, house::checkOut);
  }

  @POST
  @Path("/check-in")
  @Consumes(MediaType.APPLICATION_JSON)
  @Parameter(
      name = HttpHeaders.IF_MATCH,
      in = ParameterIn.HEADER,
      description = HoldWords.IF_MATCH_ABOUT,
      example = HoldExamples.ANY,
      schema = @Schema(implementation = String.class))
  @Operation(
      operationId = "checkInHold",
      summary = "Have units back",
      description =
          "All that is out of the caller's house, or those that the body names. An early return frees"
              + " them for others once they are turned round; a late one says whom it hits. What"
              + " nobody collected in the house is let go with the last of its units; once the hold"
              + " is over, also where nothing is out, and in all houses with the last unit of all. By"
              + " a publisher."
              + HoldWords.CONDITION)
  @RequestBody(
      required = false,
      content =
          @Content(
              mediaType = MediaType.APPLICATION_JSON,
              schema = @Schema(implementation = ReturnTold.class),
              examples =
                  @ExampleObject(
                      name = "one-unit",
                      summary = "One of them, the others later",
                      value = HoldExamples.SOME_UNITS)))
  @APIResponse(
      responseCode = "200",
      description = "The hold as it is now, and whom a late return hits",
      content = @Content(schema = @Schema(implementation = CheckedInView.class)))
  public FormOfState checkIn(
      @Parameter(description = HoldWords.HOLD, example = HoldExamples.OUT) @PathParam("hold")
          String hold,
      @Context HttpHeaders headers,
      InputStream body) {
    Caller asking = caller.get();
    UUID id = HoldPath.id(hold);
    ReturnTold told = returned(body);
    return CheckedInView.tagged(
        refusals.told(() -> house.checkIn(asking, id, told.serials(), stands(headers, id))));
  }

  /** Whoever has all back need not say so. */
  private ReturnTold returned(InputStream body) {
    byte[] bytes = WholeBody.of(body);
    return bytes.length == 0 ? ReturnTold.ALL : reader.read(bytes, ReturnTold.class);
  }

  private Hold found(String hold) {
    Caller asking = caller.get();
    UUID id = HoldPath.id(hold);
    return refusals.told(() -> holds.find(asking, id));
  }

  private FormOfState step(String hold, HttpHeaders headers, Step step) {
    Caller asking = caller.get();
    UUID id = HoldPath.id(hold);
    Supplier<Hold> taken = () -> step.take(asking, id, stands(headers, id));
    return HoldView.tagged(refusals.told(taken));
  }

  private static Precondition stands(HttpHeaders headers, UUID hold) {
    return ChangeConditions.of(headers).on(revision -> HoldView.tag(hold, revision));
  }
}
