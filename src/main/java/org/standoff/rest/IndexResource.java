package org.standoff.rest;

import com.fasterxml.jackson.annotation.JsonProperty;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.jboss.resteasy.reactive.RestResponse;

/** Leads from the bare address of the service to everything that it offers. */
@Path("/")
@Tag(name = "service", description = "The service itself")
public class IndexResource {

  /** Media type of a set of links (RFC 9264). */
  static final String LINKSET = "application/linkset+json";

  private static final String CATALOG = "/.well-known/api-catalog";

  /** Relations that a header tells too; the items are too many. */
  private static final Set<String> IN_A_HEADER =
      Set.of("service-desc", "service-doc", "api-catalog", "status", "license");

  /**
   * Where to begin.
   *
   * @param title name of the service
   * @param version version of the engine that calculates
   * @param links where to go from here
   * @param templates addresses in which something has to be filled in
   */
  @Schema(name = "Index")
  public record Index(
      @Schema(description = "Name of the service") String title,
      @Schema(description = "Version of the engine that calculates") String version,
      @Schema(description = "Where to go from here") List<Link> links,
      @Schema(description = "Addresses in which something has to be filled in")
          List<Template> templates) {}

  /**
   * An address in which something has to be filled in.
   *
   * @param template with its variables in braces (RFC 6570, level 1)
   * @param title what is there, in words
   */
  @Schema(name = "Template")
  public record Template(
      @Schema(description = "The address with its variables in braces (RFC 6570, level 1)")
          String template,
      @Schema(description = "What is there, in words") String title) {}

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
      @Schema(description = "The target in words") String title) {

    String asHeader() {
      return "<" + href + ">; rel=\"" + rel + "\"";
    }
  }

  /** A set of links (RFC 9264). */
  @Schema(name = "LinkSet")
  public record LinkSet(
      @Schema(description = "Links by the page that they start from") List<Anchored> linkset) {}

  /** Links that start from one page. */
  @Schema(name = "LinkContext")
  public record Anchored(
      @Schema(description = "The page that the links start from") String anchor,
      @JsonProperty("service-desc") List<Target> serviceDesc,
      @JsonProperty("service-doc") List<Target> serviceDoc,
      List<Target> status,
      List<Target> license) {}

  /** Where a link leads. */
  @Schema(name = "LinkTarget")
  public record Target(@Schema(description = "Address of the target") String href) {}

  private final Index index;

  IndexResource(ServedDescription description) {
    this.index =
        new Index(
            description.title(), description.version(), links(description), templates(description));
  }

  @GET
  @Produces(MediaType.APPLICATION_JSON)
  @Operation(
      operationId = "index",
      summary = "Where everything is",
      description = "Links from the bare address to everything that the service offers.")
  public RestResponse<Index> index() {
    String header =
        index.links().stream()
            .filter(link -> IN_A_HEADER.contains(link.rel()))
            .map(Link::asHeader)
            .collect(Collectors.joining(", "));
    return RestResponse.ResponseBuilder.ok(index).header(HttpHeaders.LINK, header).build();
  }

  @GET
  @Path(".well-known/api-catalog")
  @Produces(LINKSET)
  @Operation(
      operationId = "apiCatalog",
      summary = "Where the description and the health are (RFC 9727)",
      description =
          "A set of links (RFC 9264) at the well-known address, for programs that know the host alone.")
  public RestResponse<LinkSet> apiCatalog() {
    LinkSet set =
        new LinkSet(
            List.of(
                new Anchored(
                    "/",
                    targets("service-desc"),
                    targets("service-doc"),
                    targets("status"),
                    targets("license"))));
    String itself =
        index.links().stream()
            .filter(link -> link.href().equals(CATALOG))
            .map(Link::asHeader)
            .collect(Collectors.joining());
    return RestResponse.ResponseBuilder.ok(set).header(HttpHeaders.LINK, itself).build();
  }

  /**
   * What no description lists, and every operation at whose address nothing has to be filled in.
   */
  private static List<Link> links(ServedDescription description) {
    Map<String, Link> byAddress = new LinkedHashMap<>();
    Stream.concat(
            Stream.of(
                new Link("service-desc", "/openapi", "Description of the API (OpenAPI 3.1)"),
                new Link("service-doc", DescriptionResource.PAGE, "The same for people"),
                new Link("api-catalog", CATALOG, "The same links as a set (RFC 9727)"),
                new Link("status", "/q/health", "Health of the service and its parts"),
                new Link("related", "/q/metrics", "What the service has done, in figures"),
                new Link("license", description.licence(), "Licence of the service"),
                new Link("self", "/", "This page")),
            description.operations().stream()
                .filter(ServedDescription.Operation::isABeginning)
                .map(operation -> new Link("item", operation.path(), operation.summary())))
        .forEach(link -> byAddress.putIfAbsent(link.href(), link));
    return List.copyOf(byAddress.values());
  }

  private static List<Template> templates(ServedDescription description) {
    Map<String, Template> byAddress = new LinkedHashMap<>();
    description.operations().stream()
        .filter(operation -> !operation.isABeginning())
        .forEach(
            operation ->
                byAddress.putIfAbsent(
                    operation.path(), new Template(operation.path(), operation.summary())));
    return List.copyOf(byAddress.values());
  }

  private List<Target> targets(String rel) {
    return index.links().stream()
        .filter(link -> link.rel().equals(rel))
        .map(link -> new Target(link.href()))
        .toList();
  }
}
