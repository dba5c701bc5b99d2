package org.standoff.contract.generated;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standoff.fixture.NumbersInProblems;

/** Holds every answer to the description. */
final class Judge {
  private static final String PROBLEM = "application/problem+json";
  private static final String LINES = "application/x-ndjson";
  private static final int LONGEST_SHOWN = 600;

  private final Api api;
  private final String host;

  Judge(Api api, String host) {
    this.api = api;
    this.host = host;
  }

  String curl(Call call) {
    return call.curl(host);
  }

  List<Finding> judge(Case sent, Reply reply) {
    Found found = new Found(sent, reply);
    if (reply.status() >= 500) {
      found.add(Finding.Kind.SERVER_FAULT, "status " + reply.status());
      return found.all;
    }
    boolean nothingShown =
        sent.expected() == Expected.KEPT_FROM_OTHERS && reply.isGood() && isEmptyList(reply);
    if (!sent.expected().allows(reply.status()) && !nothingShown) {
      found.add(
          sent.expected().otherwise(),
          "status " + reply.status() + ", but what was sent " + sent.expected().words());
    }
    boolean body = reply.body().length > 0 && !sent.call().method().equals("HEAD");
    if (sent.expected() == Expected.NO_SUCH_METHOD) {
      // such an operation is not described; its refusal still has to name those that are
      allowHeader(sent, reply, found);
      problem(reply, found);
      return found.all;
    }
    Optional<JsonNode> told = sent.operation().response(reply.status());
    if (told.isEmpty()) {
      found.add(Finding.Kind.UNDOCUMENTED_STATUS, "status " + reply.status());
    }
    if (reply.isRefusal() && body) {
      problem(reply, found);
    }
    if (sent.operation().isDeprecated() && reply.isGood()) {
      for (String notice : List.of("Deprecation", "Sunset")) {
        if (reply.header(notice).isEmpty()) {
          found.add(Finding.Kind.MISSING_HEADER, "no " + notice);
        }
      }
    }
    told.ifPresent(
        response -> {
          headers(response, reply, found);
          if (body || response.has("content") && !sent.call().method().equals("HEAD")) {
            content(sent, response.path("content"), reply, found);
          }
        });
    return found.all;
  }

  private static boolean isEmptyList(Reply reply) {
    JsonNode body = tree(reply.text());
    return body != null && body.path("items").isArray() && body.path("items").isEmpty();
  }

  private void headers(JsonNode told, Reply reply, Found found) {
    for (Map.Entry<String, JsonNode> header : told.path("headers").properties()) {
      boolean promised =
          api.resolve(header.getValue()).path("required").asBoolean()
              || header.getKey().equals("ETag");
      if (promised && reply.header(header.getKey()).isEmpty()) {
        found.add(Finding.Kind.MISSING_HEADER, "no " + header.getKey());
      }
    }
  }

  private void content(Case sent, JsonNode content, Reply reply, Found found) {
    String type = reply.mediaType();
    if (!content.has(type)) {
      found.add(Finding.Kind.UNDOCUMENTED_MEDIA_TYPE, "'" + type + "' for " + reply.status());
      return;
    }
    if (type.equals(LINES)) {
      lines(sent.operation(), reply, found);
    } else if (type.endsWith("json")) {
      against(content.get(type).path("schema"), reply.text(), found);
    }
  }

  /** Every line holds what a single question would have got. */
  private void lines(Api.Operation operation, Reply reply, Found found) {
    JsonNode good =
        operation
            .response(reply.status())
            .map(told -> told.at("/content/application~1json/schema"))
            .orElseThrow();
    JsonNode bad = Api.JSON.createObjectNode().put("$ref", "#/components/schemas/Problem");
    reply
        .text()
        .lines()
        .forEach(
            line -> {
              JsonNode tree = tree(line);
              if (tree == null || tree.has("answer") == tree.has("problem")) {
                found.add(Finding.Kind.BODY_AGAINST_SCHEMA, "line: " + line);
              } else if (tree.has("problem")) {
                against(bad, tree.get("problem").toString(), found);
                numbers(tree.get("problem"), found);
              } else if (!good.isMissingNode()) {
                against(good, tree.get("answer").toString(), found);
              }
            });
  }

  private void against(JsonNode schema, String text, Found found) {
    JsonNode body = tree(text);
    if (body == null) {
      found.add(Finding.Kind.BODY_AGAINST_SCHEMA, "the body is no JSON");
      return;
    }
    List<String> faults = api.faults(schema, body);
    if (!faults.isEmpty()) {
      found.add(
          Finding.Kind.BODY_AGAINST_SCHEMA,
          String.join("; ", faults.subList(0, Math.min(3, faults.size()))));
    }
  }

  private static void problem(Reply reply, Found found) {
    JsonNode problem = reply.mediaType().equals(PROBLEM) ? tree(reply.text()) : null;
    boolean whole =
        problem != null
            && problem.path("status").asInt() == reply.status()
            && problem.path("type").isTextual()
            && problem.path("title").isTextual()
            && problem.path("detail").isTextual()
            && problem.path("code").isTextual()
            && problem
                .path("instance")
                .asText()
                .equals("urn:uuid:" + reply.header("Request-Id").orElse("none"));
    if (!whole) {
      found.add(Finding.Kind.NO_PROBLEM, "status " + reply.status() + " as " + reply.mediaType());
    }
    if (problem != null) {
      numbers(problem, found);
    }
  }

  private static void numbers(JsonNode problem, Found found) {
    List<String> untold = NumbersInProblems.untold(problem);
    if (!untold.isEmpty()) {
      found.add(Finding.Kind.NUMBER_IN_WORDS_ALONE, String.join("; ", untold));
    }
  }

  private void allowHeader(Case sent, Reply reply, Found found) {
    Collection<String> offered = List.of(reply.header("Allow").orElse("").split(",\\s*"));
    if (reply.status() == 405 && !offered.containsAll(api.methodsOf(sent.operation().path()))) {
      found.add(Finding.Kind.MISSING_HEADER, "Allow: " + offered);
    }
  }

  /** Null where it is no JSON. */
  static JsonNode tree(String text) {
    try {
      return Api.JSON.readTree(text);
    } catch (JsonProcessingException unreadable) {
      return null;
    }
  }

  /** What was found about one answer. */
  private final class Found {
    private final List<Finding> all = new ArrayList<>();
    private final Case sent;
    private final Reply reply;

    Found(Case sent, Reply reply) {
      this.sent = sent;
      this.reply = reply;
    }

    void add(Finding.Kind kind, String seen) {
      String text = reply.text();
      String cut = text.length() > LONGEST_SHOWN ? text.substring(0, LONGEST_SHOWN) + "…" : text;
      all.add(
          new Finding(
              kind,
              sent.operation().id(),
              sent.label(),
              seen + "\n    " + cut.replace("\n", "\n    "),
              sent.call().curl(host)));
    }
  }
}
