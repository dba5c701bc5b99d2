package org.standoff.rest.catalogue;

import io.quarkus.arc.All;
import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.PathParam;
import jakarta.ws.rs.Produces;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.eclipse.microprofile.openapi.annotations.enums.SchemaType;
import org.eclipse.microprofile.openapi.annotations.media.Content;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.eclipse.microprofile.openapi.annotations.parameters.Parameter;
import org.eclipse.microprofile.openapi.annotations.responses.APIResponse;
import org.eclipse.microprofile.openapi.annotations.tags.Tag;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.rest.http.CacheFor;

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
