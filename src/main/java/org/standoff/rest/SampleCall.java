package org.standoff.rest;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.ws.rs.core.HttpHeaders;
import java.net.URLEncoder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.StreamSupport;

/**
 * A call of an operation, as the first of its examples in the description has it.
 *
 * @param method in capitals
 * @param url whole
 * @param headers by name, but for the token
 * @param needsToken whether one has to be shown
 * @param body what is sent, if anything is
 */
record SampleCall(
    String method,
    String url,
    Map<String, String> headers,
    boolean needsToken,
    Optional<String> body) {

  /** For a change of what stands, whatever that is; what is made by it needs nothing to stand. */
  private static final String ANY_STATE = "*";

  private static final String MADE = "201";

  /**
   * @param server where the service is
   * @param method in capitals
   * @param path with its variables in braces
   * @param operation of the description
   */
  static SampleCall of(String server, String method, String path, JsonNode operation) {
    Map<String, String> headers = new LinkedHashMap<>();
    List<String> query = new ArrayList<>();
    String address = path;
    String example = exampleOf(operation.path("parameters")).orElse("");
    boolean isMade = operation.path("responses").has(MADE);
    for (JsonNode parameter : operation.path("parameters")) {
      String name = parameter.path("name").asText();
      List<String> values = values(parameter, example, isMade);
      switch (parameter.path("in").asText()) {
        case "path" -> address = address.replace("{" + name + "}", values.get(0));
        case "query" ->
            values.forEach(value -> query.add(name + "=" + URLEncoder.encode(value, UTF_8)));
        default -> values.forEach(value -> headers.put(name, value));
      }
    }
    Optional<Map.Entry<String, JsonNode>> form = first(operation.at("/requestBody/content"));
    form.ifPresent(sent -> headers.put(HttpHeaders.CONTENT_TYPE, sent.getKey()));
    return new SampleCall(
        method,
        server + address + (query.isEmpty() ? "" : "?" + String.join("&", query)),
        headers,
        needsToken(operation.path("security")),
        form.flatMap(sent -> first(sent.getValue().path("examples")))
            .map(shown -> text(shown.getValue().path("value"))));
  }

  /** The example of a query that stands first; its values are spread over the parameters. */
  private static Optional<String> exampleOf(JsonNode parameters) {
    return StreamSupport.stream(parameters.spliterator(), false)
        .flatMap(parameter -> first(parameter.path("examples")).stream())
        .map(Map.Entry::getKey)
        .findFirst();
  }

  private static List<String> values(JsonNode parameter, String example, boolean isMade) {
    JsonNode value =
        parameter.has("example")
            ? parameter.path("example")
            : parameter.path("examples").path(example).path("value");
    if (value.isMissingNode()) {
      boolean isCondition = HttpHeaders.IF_MATCH.equals(parameter.path("name").asText());
      return isCondition && !isMade ? List.of(ANY_STATE) : List.of();
    }
    List<String> texts = new ArrayList<>();
    (value.isArray() ? value : List.of(value)).forEach(one -> texts.add(one.asText()));
    return texts;
  }

  /** Where it is open, one of the ways to be let in is to show nothing. */
  private static boolean needsToken(JsonNode security) {
    return StreamSupport.stream(security.spliterator(), false).noneMatch(JsonNode::isEmpty);
  }

  private static Optional<Map.Entry<String, JsonNode>> first(JsonNode members) {
    return members.properties().stream().findFirst();
  }

  private static String text(JsonNode value) {
    return value.isTextual() ? value.asText() : value.toPrettyString();
  }
}
