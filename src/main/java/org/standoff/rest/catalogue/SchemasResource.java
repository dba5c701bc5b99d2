package org.standoff.rest.catalogue;

import io.quarkus.arc.All;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.Context;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.UriInfo;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.ParameterIn;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.rest.http.CacheFor;
import org.standoff.rest.http.Page;
import org.standoff.rest.http.PageRequest;

/** The schemas of catalogue files, for editors: the very ones that the loader checks with. */
@Path("/schemas")
@Tag(name = "catalogue")
public class SchemasResource {

  private static final String MEDIA_TYPE = "application/schema+json";
  private static final String PACK = "pack";
  private static final int FRESH_S = 3600;

  private final Map<String, byte[]> schemas = new TreeMap<>();

  SchemasResource(@All List<CatalogueKind<?>> kinds) {
    schemas.put(PACK, read("catalogue/schema/pack.json", SchemasResource.class.getClassLoader()));
    for (CatalogueKind<?> kind : kinds) {
      schemas.put(kind.name(), read(kind.schemaResource(), kind.getClass().getClassLoader()));
    }
  }

  /**
   * A schema in the list.
   *
   * @param kind name of the kind, or pack
   * @param href address of the schema
   */
  @Schema(name = "CatalogueSchema", description = "Where the schema of a kind is")
  public record Listed(
      @Schema(description = "Name of the kind, or pack", examples = "microphone") String kind,
      @Schema(description = "Address of the schema", examples = "/schemas/microphone.json")
          String href) {}

  /** Where the schema of a kind is. */
  static String address(String kind) {
    return "/schemas/" + kind + ".json";
  }

  @GET
  @Produces(MediaType.APPLICATION_JSON)
  @CacheFor(seconds = FRESH_S)
  @Operation(
      operationId = "listSchemas",
      summary = "Schemas of catalogue files",
      description = "In the order of the kinds that they are of; pack is that of pack.yaml.")
  @Parameter(name = PageRequest.SIZE, in = ParameterIn.QUERY)
  @Parameter(name = PageRequest.TOKEN, in = ParameterIn.QUERY)
  public Page<Listed> list(@Context UriInfo uri) {
    List<Listed> all =
        schemas.keySet().stream().map(kind -> new Listed(kind, address(kind))).toList();
    return PageRequest.of(uri).of(all, Listed::kind);
  }

  @GET
  @Path("/{kind}.json")
  @Produces(MEDIA_TYPE)
  @CacheFor(seconds = FRESH_S)
  @Operation(
      operationId = "getSchema",
      summary = "JSON Schema (2020-12) of the files of a kind, or of pack.yaml",
      description =
          "For editors: the very schema that the loader checks files with, and items that come with a question.")
  @APIResponse(
      responseCode = "200",
      description = "The schema",
      content = @Content(mediaType = MEDIA_TYPE, schema = @Schema(type = SchemaType.OBJECT)))
  public byte[] schema(
      @Parameter(description = "The kind, or pack", example = "microphone") @PathParam("kind")
          String kind) {
    byte[] schema = schemas.get(kind);
    if (schema == null) {
      throw new NotFoundException();
    }
    return schema;
  }

  private static byte[] read(String resource, ClassLoader loader) {
    try (InputStream in = loader.getResourceAsStream(resource)) {
      return in.readAllBytes();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
