package org.standoff.rest.kit;

import jakarta.ws.rs.Consumes;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.PUT;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.QueryParam;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.ExampleObject;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.parameters.RequestBody;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.kit.Caller;
import org.standoff.kit.stock.FaultyKit;
import org.standoff.kit.stock.KitCheck;
import org.standoff.kit.stock.KitUnit;
import org.standoff.kit.stock.Stock;
import org.standoff.kit.stock.StoredUnit;
import org.standoff.kit.stock.WholeKit;
import org.standoff.rest.http.ChangeConditions;
import org.standoff.rest.http.FormOfState;
import org.standoff.rest.http.PageRequest;
import org.standoff.rest.http.ReadsQuery;
import org.standoff.rest.http.Tagged;
import org.standoff.rest.json.RequestReader;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.openapi.QueryExample;
import org.standoff.rest.security.CurrentCaller;

/** All units of a house: lists of them, and the whole kit published at once. */
@Path("/v1/houses/{house}/units")
@Tag(name = "kit")
public class UnitsResource {

  private static final Set<String> PAGING = Set.of(PageRequest.SIZE, PageRequest.TOKEN);
  private static final int READ_AT_ONCE = 5_000;

  private final Stock stock;
  private final WholeKit wholeKit;
  private final KitCheck check;
  private final RequestReader reader;
  private final CurrentCaller caller;

  UnitsResource(
      Stock stock, WholeKit wholeKit, KitCheck check, RequestReader reader, CurrentCaller caller) {
    this.stock = stock;
    this.wholeKit = wholeKit;
    this.check = check;
    this.reader = reader;
    this.caller = caller;
  }

  @GET
  @Produces(MediaType.APPLICATION_JSON)
  @ReadsQuery(UnitQuery.class)
  @QueryExample(name = "one-model", query = "microphone=boathouse/sdc-omni-1&state=available")
  @Operation(
      operationId = "listUnits",
      summary = "Units of a house",
      description =
          "In the order of their serial numbers; retired ones only where asked for by state. As"
              + " text/csv all that the filter keeps, without pages; without a filter that sheet can"
              + " be published again as it is. The ETag of an answer that has the whole kit, in"
              + " either form, can be sent as If-Match when all of it is published; that of a part"
              + " (a filter, or more pages than one) can't, because what is not told is retired:"
              + " who has read all parts sends kit_etag.")
  @APIResponse(
      responseCode = "200",
      description = "Units of the house",
      content = @Content(schema = @Schema(implementation = KitPage.class)))
  public Object list(
      @Parameter(description = KitWords.HOUSE, example = KitExamples.HOUSE) @PathParam("house")
          String house,
      @Context UriInfo uri) {
    PageRequest page = PageRequest.of(uri);
    UnitQuery query = reader.readQuery(uri.getQueryParameters(), UnitQuery.class, PAGING);
    String after = page.after() == null ? "" : page.after();
    // before the units: a tag that is too old is refused, one that is too new would lose a change
    String tag = PublishView.tag(house, stock.revision(house));
    List<UnitView> units =
        stock.list(house, query.filter(), after, page.size() + 1).stream()
            .map(UnitView::of)
            .toList();
    KitPage told = KitPage.of(tag, page.of(units, UnitView::serial));
    boolean whole = query.keepsAll() && page.after() == null && told.nextPageToken() == null;
    return whole ? new FormOfState(tag, told) : told;
  }

  @GET
  @Produces(CsvTable.MEDIA_TYPE)
  @ReadsQuery(UnitQuery.class)
  @Operation(hidden = true)
  public Object sheet(@PathParam("house") String house, @Context UriInfo uri) {
    UnitQuery query = reader.readQuery(uri.getQueryParameters(), UnitQuery.class);
    String tag = PublishView.tag(house, stock.revision(house));
    UnitSheet sheet = new UnitSheet();
    String after = "";
    List<StoredUnit> units;
    do {
      units = stock.list(house, query.filter(), after, READ_AT_ONCE);
      for (StoredUnit unit : units) {
        sheet.add(unit.unit());
        after = unit.unit().serial();
      }
    } while (units.size() == READ_AT_ONCE);
    return query.keepsAll() ? new FormOfState(tag, sheet.text()) : sheet.text();
  }

  @PUT
  @Consumes(MediaType.APPLICATION_JSON)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "putUnits",
      summary = "Publish the whole kit of a house",
      description =
          "All units at once, in one transaction: what is new is added, what is told otherwise is"
              + " changed, what is not told any more is retired. Nothing is changed where anything is"
              + " wrong. The same kit again changes nothing. A unit that is promised to somebody"
              + " can't be retired or become another microphone (409, with the holds). As JSON up to"
              + " 1 MiB; as text/csv (RFC 4180, UTF-8, a header row that names the columns) up to"
              + " 32 MiB and 200,000 units, and every fault with its row and column. The tag is"
              + " that of the list of the whole kit, as JSON or CSV. The items of that list can be"
              + " sent back as units: what only the service sets (readOnly) is passed over, but a"
              + " unit of another house is refused (400). "
              + KitWords.CONDITIONS)
  @RequestBody(
      required = true,
      content = {
        @Content(
            mediaType = MediaType.APPLICATION_JSON,
            schema = @Schema(implementation = KitTold.class),
            examples =
                @ExampleObject(
                    name = "kit",
                    summary = "Two microphones and a matched pair",
                    value = KitExamples.UNITS)),
        @Content(
            mediaType = CsvTable.MEDIA_TYPE,
            schema = @Schema(implementation = String.class),
            examples =
                @ExampleObject(
                    name = "sheet",
                    summary = "The same as a sheet",
                    value = KitExamples.SHEET))
      })
  @APIResponse(
      responseCode = "200",
      description = "What it changed, or would change",
      content = @Content(schema = @Schema(implementation = PublishView.class)))
  public Tagged publish(
      @Parameter(description = KitWords.HOUSE, example = KitExamples.HOUSE) @PathParam("house")
          String house,
      @Parameter(
              description = KitWords.DRY_RUN,
              schema = @Schema(type = SchemaType.BOOLEAN, defaultValue = "false"))
          @QueryParam(KitWords.DRY_RUN_NAME)
          String dryRun,
      @Context HttpHeaders headers,
      InputStream body) {
    Caller publisher = publisherOf(house);
    KitTold told = reader.read(body, KitTold.class, Map.of("house", house));
    try {
      return publish(publisher, house, told.kit(), dryRun, headers);
    } catch (FaultyKit faulty) {
      throw KitFaults.inUnits(faulty);
    }
  }

  @PUT
  @Consumes(CsvTable.MEDIA_TYPE)
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(hidden = true)
  public Tagged publishSheet(
      @PathParam("house") String house,
      @QueryParam(KitWords.DRY_RUN_NAME) String dryRun,
      @Context HttpHeaders headers,
      InputStream body) {
    Caller publisher = publisherOf(house);
    KitSheet sheet = KitSheet.read(body);
    try {
      return publish(publisher, house, sheet.units(check), dryRun, headers);
    } catch (FaultyKit faulty) {
      throw sheet.refused(faulty);
    }
  }

  private Caller publisherOf(String house) {
    Caller publisher = caller.get();
    publisher.mustPublishFor(house);
    return publisher;
  }

  private Tagged publish(
      Caller publisher, String house, List<KitUnit> kit, String dryRun, HttpHeaders headers) {
    return PublishView.tagged(
        house,
        wholeKit.publish(
            publisher,
            house,
            kit,
            Flag.of(KitWords.DRY_RUN_NAME, dryRun),
            ChangeConditions.of(headers).on(revision -> PublishView.tag(house, revision))));
  }
}
