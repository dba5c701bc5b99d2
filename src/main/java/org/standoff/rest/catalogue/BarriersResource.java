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
import org.standoff.catalogue.kind.BarrierKind;
import org.standoff.rest.http.CacheFor;
import org.standoff.rest.http.Page;
import org.standoff.rest.http.ReadsQuery;
import org.standoff.rest.http.Tagged;
import org.standoff.rest.media.CsvTable;
import org.standoff.rest.openapi.QueryExample;

/** Barriers of the packs in use. */
@Path("/v1/barriers")
@Tag(name = "catalogue")
public class BarriersResource {

  private final ItemListing listing;
  private final BarrierKind kind;

  BarriersResource(ItemListing listing, BarrierKind kind) {
    this.listing = listing;
    this.kind = kind;
  }

  @GET
  @Produces(MediaType.APPLICATION_JSON)
  @QueryExample(name = "of-a-pack", query = "pack=core")
  @ReadsQuery(PlainQuery.class)
  @CacheFor(seconds = PacksResource.FRESH_S)
  @Operation(
      operationId = "listBarriers",
      summary = "Barriers of the packs in use",
      description = "In the order of their ids. As text/csv the whole list, without pages.")
  public Page<ItemRow> list(@Context UriInfo uri) {
    return listing.page(kind, PlainQuery.class, uri);
  }

  @GET
  @Produces(CsvTable.MEDIA_TYPE)
  @ReadsQuery(PlainQuery.class)
  @CacheFor(seconds = PacksResource.FRESH_S)
  @Operation(hidden = true)
  public String table(@Context UriInfo uri) {
    return listing.csv(kind, PlainQuery.class, uri);
  }

  @GET
  @Path("/{pack}/{item}")
  @Produces(MediaType.APPLICATION_JSON)
  @CacheFor(seconds = PacksResource.FRESH_S)
  @Operation(
      operationId = "getBarrier",
      summary = "A barrier as its file describes it",
      description = CatalogueItem.ABOUT)
  @APIResponse(
      responseCode = "200",
      description = "The barrier; /schemas/barrier.json describes its members",
      content = @Content(schema = @Schema(implementation = CatalogueItem.class)))
  public Tagged item(
      @Parameter(description = "Name of the pack", example = "core") @PathParam("pack") String pack,
      @Parameter(description = "Name of the item in the pack", example = "gobo-absorbing")
          @PathParam("item")
          String item) {
    return listing.item(kind, pack, item);
  }
}
