package org.standoff.rest;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.quarkus.smallrye.openapi.runtime.OpenApiConstants;
import io.quarkus.smallrye.openapi.runtime.OpenApiDocumentService;
import io.smallrye.openapi.runtime.io.Format;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.MediaType;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.standoff.rest.http.EntityTags;
import org.standoff.rest.http.Tagged;

/** The description of the interface, as the build has made it: what is served, and what it says. */
@ApplicationScoped
class ServedDescription {

  private static final List<String> METHODS = List.of("get", "put", "post", "delete");

  private final Tagged yaml;
  private final Tagged json;
  private final JsonNode told;
  private final List<Operation> operations;

  ServedDescription(OpenApiDocumentService documents, ObjectMapper mapper) {
    byte[] asJson = documents.getDocument(OpenApiConstants.DEFAULT_DOCUMENT_NAME, Format.JSON);
    byte[] asYaml = documents.getDocument(OpenApiConstants.DEFAULT_DOCUMENT_NAME, Format.YAML);
    this.json = tagged(asJson, MediaType.APPLICATION_JSON);
    this.yaml = tagged(asYaml, DescriptionResource.YAML);
    try {
      this.told = mapper.readTree(asJson);
    } catch (IOException impossible) {
      throw new UncheckedIOException("The build writes JSON", impossible);
    }
    this.operations = allOperations();
  }

  /**
   * An operation.
   *
   * @param method in capitals
   * @param path with its variables in braces
   * @param sample a call of it
   */
  record Operation(
      String method,
      String path,
      String tag,
      String summary,
      String description,
      SampleCall sample) {

    /** Whether one can go there from nowhere, because nothing has to be filled in. */
    boolean isABeginning() {
      return path.indexOf('{') < 0;
    }
  }

  Tagged yaml() {
    return yaml;
  }

  Tagged json() {
    return json;
  }

  String title() {
    return told.at("/info/title").asText();
  }

  String version() {
    return told.at("/info/version").asText();
  }

  String words() {
    return told.at("/info/description").asText();
  }

  String licence() {
    return told.at("/info/license/url").asText();
  }

  /** In the order of their paths; of one path that which reads comes first. */
  List<Operation> operations() {
    return operations;
  }

  private List<Operation> allOperations() {
    List<Operation> all = new ArrayList<>();
    told.path("paths")
        .properties()
        .forEach(
            path ->
                METHODS.stream()
                    .filter(path.getValue()::has)
                    .forEach(method -> all.add(operation(method, path.getKey(), path.getValue()))));
    return List.copyOf(all);
  }

  private Operation operation(String name, String path, JsonNode item) {
    JsonNode operation = item.path(name);
    String method = name.toUpperCase(Locale.ROOT);
    return new Operation(
        method,
        path,
        operation.at("/tags/0").asText(),
        operation.path("summary").asText(),
        operation.path("description").asText(),
        SampleCall.of(told.at("/servers/0/url").asText(), method, path, operation));
  }

  private static Tagged tagged(byte[] document, String mediaType) {
    return new Tagged(EntityTags.of(document, mediaType), document);
  }
}
