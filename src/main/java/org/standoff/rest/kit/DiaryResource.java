package org.standoff.rest.kit;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.kit.hold.Diary;
import org.standoff.kit.stock.UnknownUnit;
import org.standoff.rest.http.Page;
import org.standoff.rest.http.PageRequest;
import org.standoff.rest.http.ReadsQuery;
import org.standoff.rest.json.RequestReader;
import org.standoff.rest.openapi.QueryExample;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.security.CurrentCaller;

/** When a unit is promised. */
@Path("/v1/houses/{house}/units/{serial}/diary")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "kit")
public class DiaryResource {

  private static final Set<String> PAGING = Set.of(PageRequest.SIZE, PageRequest.TOKEN);

  private final Diary diary;
  private final RequestReader reader;
  private final CurrentCaller caller;

  DiaryResource(Diary diary, RequestReader reader, CurrentCaller caller) {
    this.diary = diary;
    this.reader = reader;
    this.caller = caller;
  }

  @GET
  @ReadsQuery(DiaryQuery.class)
  @QueryExample(name = "a-month", query = HoldExamples.WINDOW)
  @Operation(
      operationId = "getDiary",
      summary = "When a unit is promised",
      description =
          "Every promise that reaches into the period, in the order of time. Everybody may see when a"
              + " unit is busy; whose it is then, only the desk, the house and an admin.")
  public Page<DiaryEntry> diary(
      @Parameter(description = KitWords.HOUSE, example = HoldExamples.HOUSE) @PathParam("house")
          String house,
      @Parameter(description = KitWords.SERIAL, example = HoldExamples.SERIAL) @PathParam("serial")
          String serial,
      @Context UriInfo uri) {
    PageRequest page = PageRequest.of(uri);
    DiaryQuery query = reader.readQuery(uri.getQueryParameters(), DiaryQuery.class, PAGING);
    List<DiaryEntry> entries =
        diary
            .of(
                caller.ifAny(),
                house,
                serial,
                AskedTimes.periodOfQuery(query.from(), query.to()),
                Optional.ofNullable(page.after()).map(DiaryResource::moment),
                page.size() + 1)
            .orElseThrow(() -> new UnknownUnit(serial))
            .stream()
            .map(DiaryEntry::of)
            .toList();
    return page.of(entries, DiaryEntry::key);
  }

  private static Instant moment(String key) {
    try {
      Instant moment = Instant.parse(key);
      if (AskedTimes.outsideInQuery(moment, PageRequest.TOKEN).isEmpty()) {
        return moment;
      }
    } catch (DateTimeParseException notOurs) {
      // told below
    }
    throw new InvalidRequest(
        Fault.ofParameter(PageRequest.TOKEN, FaultCode.WRONG_FORM, "This token is not ours."));
  }
}
