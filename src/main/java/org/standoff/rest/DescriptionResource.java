package org.standoff.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotAcceptableException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.Request;
import jakarta.ws.rs.core.Response;
import jakarta.ws.rs.core.Variant;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.rest.http.CacheFor;
import org.standoff.rest.http.Tagged;

/** The description of the interface: for programs as OpenAPI, for people as a page. */
@Path("/")
@Tag(name = "service")
public class DescriptionResource {

  /** Media type of YAML (RFC 9512). */
  static final String YAML = "application/yaml";

  /** Where the page for people is. */
  static final String PAGE = "/docs";

  /** It changes with the program alone. */
  private static final int FRESH_S = 3600;

  /** The first is for those who take anything. */
  private static final List<Variant> FORMS =
      Variant.mediaTypes(MediaType.valueOf(YAML), MediaType.APPLICATION_JSON_TYPE).build();

  private final ServedDescription served;
  private final String page;

  DescriptionResource(ServedDescription served) {
    this.served = served;
    this.page = DescriptionPage.of(served);
  }

  @GET
  @Path("openapi")
  @Produces({YAML, MediaType.APPLICATION_JSON})
  @CacheFor(seconds = FRESH_S)
  @Operation(hidden = true)
  public Response description(@Context Request request) {
    Variant form = request.selectVariant(FORMS);
    if (form == null) {
      throw new NotAcceptableException();
    }
    boolean isJson = form.getMediaType().equals(MediaType.APPLICATION_JSON_TYPE);
    return Response.ok(isJson ? served.json() : served.yaml()).type(form.getMediaType()).build();
  }

  @GET
  @Path("openapi.yaml")
  @Produces(YAML)
  @CacheFor(seconds = FRESH_S)
  @Operation(hidden = true)
  public Tagged yaml() {
    return served.yaml();
  }

  @GET
  @Path("openapi.json")
  @Produces(MediaType.APPLICATION_JSON)
  @CacheFor(seconds = FRESH_S)
  @Operation(hidden = true)
  public Tagged json() {
    return served.json();
  }

  @GET
  @Path("docs")
  @Produces(MediaType.TEXT_HTML)
  @CacheFor(seconds = FRESH_S)
  @Operation(
      operationId = "getDocumentation",
      summary = "What the service offers, as a page for people",
      description = "The words of /openapi: what holds for all operations, and what each does.")
  public String page() {
    return page;
  }
}
