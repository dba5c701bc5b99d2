package org.standoff.rest;

import com.fasterxml.jackson.annotation.JsonProperty;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.util.List;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;

/** Leads from the bare address of the service to everything that it offers. */
@Path("/")
@Tag(name = "service", description = "The service itself")
public class IndexResource {

  /** Media type of a set of links (RFC 9264). */
  static final String LINKSET = "application/linkset+json";

  private static final List<Link> LINKS =
      List.of(
          new Link("service-desc", "/openapi", "Description of the API (OpenAPI 3.1)"),
          new Link("api-catalog", "/.well-known/api-catalog", "The same links as a set (RFC 9727)"),
          new Link("status", "/q/health", "Health of the service and its parts"),
          new Link("item", "/v1/packs", "Catalogue packs"),
          new Link("item", "/v1/settings", "Settings for a source and a distance"),
          new Link("item", "/v1/headroom", "Levels, headroom and noise of one chain"),
          new Link("item", "/v1/stereo/geometry", "What a stereo pair makes of given sources"),
          new Link("item", "/v1/stereo/fit", "Which stereo pair spreads given players as wished"),
          new Link("item", "/v1/floor/bleed", "What every microphone hears of every source"),
          new Link("item", "/v1/floor/alignment", "When one source reaches several microphones"),
          new Link("item", "/v1/floor/aim", "How microphones are best aimed"),
          new Link("item", "/v1/floor/room", "What a room does"),
          new Link("item", "/v1/floor/exposure", "What a day does to the ears at each seat"),
          new Link("item", "/v1/houses", "Rental houses, their units and their packs"),
          new Link("item", "/v1/availability", "Which units are free in a period, and where"),
          new Link("license", "https://www.apache.org/licenses/LICENSE-2.0", "Apache-2.0"));

  /**
   * Where to begin.
   *
   * @param title name of the service
   * @param version version of the engine that calculates
   * @param links where to go from here
   */
  @Schema(name = "Index")
  public record Index(
      @Schema(description = "Name of the service") String title,
      @Schema(description = "Version of the engine that calculates") String version,
      @Schema(description = "Where to go from here") List<Link> links) {}

  /**
   * A way to go on from here.
   *
   * @param rel what the target is to this page (RFC 8288)
   * @param href address of the target
   * @param title the target in words
   */
  @Schema(name = "Link")
  public record Link(
      @Schema(description = "What the target is to this page (RFC 8288)") String rel,
      @Schema(description = "Address of the target") String href,
      @Schema(description = "The target in words") String title) {}

  /** A set of links (RFC 9264). */
  @Schema(name = "LinkSet")
  public record LinkSet(
      @Schema(description = "Links by the page that they start from") List<Anchored> linkset) {}

  /** Links that start from one page. */
  @Schema(name = "LinkContext")
  public record Anchored(
      @Schema(description = "The page that the links start from") String anchor,
      @JsonProperty("service-desc") List<Target> serviceDesc,
      List<Target> status) {}

  /** Where a link leads. */
  @Schema(name = "LinkTarget")
  public record Target(@Schema(description = "Address of the target") String href) {}

  private final Index index;

  IndexResource(@ConfigProperty(name = "quarkus.application.version") String version) {
    this.index = new Index("Standoff", version, LINKS);
  }

  @GET
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "index",
      summary = "Where everything is",
      description = "Links from the bare address to everything that the service offers.")
  public Index index() {
    return index;
  }

  @GET
  @Path(".well-known/api-catalog")
  @Produces(LINKSET)
  @Operation(
      operationId = "apiCatalog",
      summary = "Where the description and the health are (RFC 9727)",
      description =
          "A set of links (RFC 9264) at the well-known address, for programs that know the host alone.")
  public LinkSet apiCatalog() {
    return new LinkSet(List.of(new Anchored("/", targets("service-desc"), targets("status"))));
  }

  private List<Target> targets(String rel) {
    return index.links().stream()
        .filter(link -> link.rel().equals(rel))
        .map(link -> new Target(link.href()))
        .toList();
  }
}
