package org.standoff.bench;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The first example of an operation, as a request.
 *
 * @param name method and path of the operation
 * @param accept the media type of its first answer
 * @param target path with the example's values, and query
 * @param body the example's body, for those operations that take one
 */
record DescribedCall(
    String name,
    String method,
    String target,
    String accept,
    Optional<String> body,
    boolean wantsToken) {

  private static final String JSON = "application/json";

  static DescribedCall get(String target) {
    return new DescribedCall("GET " + target, "GET", target, JSON, Optional.empty(), false);
  }

  /**
   * One for each operation that changes nothing: what is got, and what is computed for a POST.
   *
   * @param hold the id of a hold that is there; the description can't know any
   */
  static List<DescribedCall> harmless(Path description, String hold) throws IOException {
    return calls(
        description,
        hold,
        (method, wantsToken) -> method.equals("get") || method.equals("post") && !wantsToken);
  }

  /** What publishes, in an order in which each finds what it needs. */
  static List<DescribedCall> publishing(Path description) throws IOException {
    return calls(description, "", (method, wantsToken) -> method.equals("put"));
  }

  private static List<DescribedCall> calls(
      Path description, String hold, BiPredicate<String, Boolean> wanted) throws IOException {
    JsonNode paths = new YAMLMapper().readTree(description.toFile()).path("paths");
    List<DescribedCall> calls = new ArrayList<>();
    for (Map.Entry<String, JsonNode> path : paths.properties()) {
      for (Map.Entry<String, JsonNode> operation : path.getValue().properties()) {
        boolean wantsToken = operation.getValue().at("/security/0").has("bearer");
        if (wanted.test(operation.getKey(), wantsToken)) {
          calls.add(of(path.getKey(), hold, operation.getKey(), operation.getValue(), wantsToken));
        }
      }
    }
    return calls;
  }

  private static DescribedCall of(
      String path, String hold, String method, JsonNode operation, boolean wantsToken) {
    String verb = method.toUpperCase(Locale.ROOT);
    JsonNode taken = operation.path("requestBody").path("content").path(JSON);
    Optional<String> body =
        taken.path("examples").properties().stream()
            .findFirst()
            .map(example -> example.getValue().path("value").toString());
    JsonNode given = operation.path("responses").path("200").path("content");
    String accept = given.has(JSON) ? JSON : given.properties().iterator().next().getKey();
    String named = path.replace("{hold}", hold);
    return new DescribedCall(
        verb + " " + path,
        verb,
        target(named, operation.path("parameters")),
        accept,
        body,
        wantsToken);
  }

  private static String target(String path, JsonNode parameters) {
    String filled = path;
    for (JsonNode parameter : parameters) {
      if (parameter.path("in").asText().equals("path")) {
        filled =
            filled.replace(
                "{" + parameter.path("name").asText() + "}", parameter.path("example").asText());
      }
    }
    Optional<String> example =
        parameters
            .valueStream()
            .flatMap(parameter -> parameter.path("examples").properties().stream())
            .map(Map.Entry::getKey)
            .findFirst();
    String query =
        example.stream()
            .flatMap(name -> parameters.valueStream().flatMap(one -> pairs(one, name)))
            .collect(Collectors.joining("&"));
    return query.isEmpty() ? filled : filled + "?" + query;
  }

  private static Stream<String> pairs(JsonNode parameter, String example) {
    JsonNode value = parameter.path("examples").path(example).path("value");
    if (value.isMissingNode()) {
      return Stream.empty();
    }
    Stream<JsonNode> values = value.isArray() ? value.valueStream() : Stream.of(value);
    return values.map(
        one ->
            parameter.path("name").asText()
                + "="
                + URLEncoder.encode(one.asText(), StandardCharsets.UTF_8));
  }
}
