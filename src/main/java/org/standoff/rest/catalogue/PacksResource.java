package org.standoff.rest.catalogue;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.CurrentCatalogue;
import org.standoff.catalogue.NearMiss;
import org.standoff.catalogue.PackStatus;
import org.standoff.rest.http.CacheFor;
import org.standoff.rest.http.Page;
import org.standoff.rest.http.PageRequest;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.problem.ProblemType;

/** Packs: what they are, and what is wrong with them. */
@Path("/v1/packs")
@Produces(MediaType.APPLICATION_JSON)
@Tag(name = "catalogue", description = "What is known: packs and their items")
public class PacksResource {

  /**
   * How long an answer from the catalogue may be kept without asking again, in s: a changed file is
   * in use about as soon.
   */
  static final int FRESH_S = 2;

  private final CurrentCatalogue current;

  PacksResource(CurrentCatalogue current) {
    this.current = current;
  }

  @GET
  @CacheFor(seconds = FRESH_S)
  @Operation(
      operationId = "listPacks",
      summary = "Packs that are or were there",
      description = "In the order of their names, faulty ones included, with all their findings.")
  @Parameter(name = PageRequest.SIZE, in = ParameterIn.QUERY)
  @Parameter(name = PageRequest.TOKEN, in = ParameterIn.QUERY)
  public Page<PackView> list(@Context UriInfo uri) {
    List<PackView> packs =
        current.get().packs().stream().map(PackView::of).map(PackView::withoutTime).toList();
    return PageRequest.of(uri).of(packs, PackView::id);
  }

  @GET
  @Path("/{pack}")
  @CacheFor(seconds = FRESH_S)
  @Operation(
      operationId = "getPack",
      summary = "How a pack stands, with every fault of its files",
      description =
          "A faulty pack keeps its last good version in use; each fault names file, line, JSON pointer, what was found and what was expected.")
  @APIResponse(
      responseCode = "200",
      description = "The pack",
      content = @Content(schema = @Schema(implementation = PackView.class)))
  public PackView pack(
      @Parameter(description = "Name of the pack", example = "core") @PathParam("pack")
          String pack) {
    Catalogue catalogue = current.get();
    return catalogue.pack(pack).map(PackView::of).orElseThrow(() -> unknown(pack, catalogue));
  }

  private static InvalidRequest unknown(String pack, Catalogue catalogue) {
    List<String> known = catalogue.packs().stream().map(PackStatus::id).toList();
    return new InvalidRequest(
        ProblemType.NOT_FOUND,
        List.of(
            Fault.ofParameter(
                    "pack", FaultCode.UNKNOWN_ITEM, "The catalogue has no pack of this name.")
                .found(pack)
                .allowed(String.join(", ", known))
                .suggestion(NearMiss.of(pack, known).orElse(null))));
  }
}
