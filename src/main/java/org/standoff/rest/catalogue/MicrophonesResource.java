package org.standoff.rest.catalogue;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.catalogue.kind.MicrophoneKind;
import org.standoff.rest.http.CacheFor;
import org.standoff.rest.http.Page;
import org.standoff.rest.http.ReadsQuery;
import org.standoff.rest.http.Tagged;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.openapi.QueryExample;

/** Microphones of the packs in use. */
@Path("/v1/microphones")
@Tag(name = "catalogue")
public class MicrophonesResource {

  private final ItemListing listing;
  private final MicrophoneKind kind;

  MicrophonesResource(ItemListing listing, MicrophoneKind kind) {
    this.listing = listing;
    this.kind = kind;
  }

  @GET
  @Produces(MediaType.APPLICATION_JSON)
  @QueryExample(
      name = "quiet-figure-8",
      query = "pattern=figure-8&max_self_noise_dba=12&order_by=self-noise")
  @QueryExample(
      name = "loud",
      query =
          "min_maximum_spl_db=140&pad_position=before-electronics&transducer=condenser&address=end")
  @ReadsQuery(MicrophoneQuery.class)
  @CacheFor(seconds = PacksResource.FRESH_S)
  @Operation(
      operationId = "listMicrophones",
      summary = "Microphones of the packs in use",
      description =
          "In the order of their ids, or as order_by says. As text/csv the whole list, without"
              + " pages.")
  public Page<ItemRow> list(@Context UriInfo uri) {
    return listing.page(kind, MicrophoneQuery.class, uri);
  }

  @GET
  @Produces(CsvTable.MEDIA_TYPE)
  @ReadsQuery(MicrophoneQuery.class)
  @CacheFor(seconds = PacksResource.FRESH_S)
  @Operation(hidden = true)
  public String table(@Context UriInfo uri) {
    return listing.csv(kind, MicrophoneQuery.class, uri);
  }

  @GET
  @Path("/{pack}/{item}")
  @Produces(MediaType.APPLICATION_JSON)
  @CacheFor(seconds = PacksResource.FRESH_S)
  @Operation(
      operationId = "getMicrophone",
      summary = "A microphone as its file describes it",
      description = CatalogueItem.ABOUT)
  @APIResponse(
      responseCode = "200",
      description = "The microphone; /schemas/microphone.json describes its members",
      content = @Content(schema = @Schema(implementation = CatalogueItem.class)))
  public Tagged item(
      @Parameter(description = "Name of the pack", example = "core") @PathParam("pack") String pack,
      @Parameter(description = "Name of the item in the pack", example = "ldc-multi-1")
          @PathParam("item")
          String item) {
    return listing.item(kind, pack, item);
  }
}
