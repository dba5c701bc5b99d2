package org.standoff.contract;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.config.EncoderConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Ask;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Kit;
import org.standoff.fixture.ScenarioHouses;
import org.standoff.fixture.Tokens;

/**
 * The description is true: every example of every operation is sent and answered, and the answer is
 * valid against the schema that is promised for it.
 */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class OpenApiExamplesTest {
  private static final String JSON = "application/json";
  private static final String LINES = "application/x-ndjson";

  /** Figures that have no unit, and parts of a figure whose own name has it. */
  private static final Set<String> UNITLESS =
      Set.of(
          "rank",
          "score",
          "weight",
          "points",
          "limit",
          "line",
          "column",
          "quantity",
          "status",
          "row",
          "revision",
          "page_size",
          "guarded_percentile",
          "clip_probability",
          "omni_part",
          "side_gain",
          "closer_share",
          "distance_ratio",
          "mean_absorption",
          "order",
          // in the unit that stands beside them, or of the member that is at fault
          "minimum",
          "exclusive_minimum",
          "maximum",
          "exclusive_maximum",
          "found",
          "figure",
          "low",
          "typical",
          "high",
          "least",
          "usual",
          "most",
          "x",
          "y",
          "z");

  private static final String UNIT =
      "(.*_)?(count|paths|days|levels|characters|requests)|hours|.*_(min|minor|m|mm|m2|m3|kg|s|ms|bytes|samples|pa|db|dba|dbu|dbfs|db_spl|hz|deg|c"
          + "|percent|pct|m_per_s|db_per_octave)";

  /** What is read has to be told first. */
  @BeforeEach
  void theHousesOfTheExamplesStand() {
    ScenarioHouses.ofTheExamples();
    HeldExamples.stand();
    Kit.house().id();
    ToldExamples.tell(Described.served());
  }

  @Test
  void everyExampleOfAQueryIsAnsweredAsPromised() {
    Described described = Described.served();
    int sent = 0;
    for (Described.Operation operation : described.operations()) {
      if (!operation.method().equals("get")) {
        continue;
      }
      Set<String> names = exampleNames(operation);
      for (String name : names.isEmpty() ? Set.of("") : names) {
        for (String form : forms(operation)) {
          Response response = query(operation, name).accept(form).get(operation.path());
          assertAnswered(described, operation, name, form, response);
          sent++;
        }
      }
    }
    assertThat(sent).isGreaterThan(40);
  }

  @Test
  void everyExampleOfABodyIsAnsweredAsPromised() {
    Described described = Described.served();
    int sent = 0;
    for (Described.Operation operation : described.operations()) {
      for (Map.Entry<String, JsonNode> body :
          operation.told().at("/requestBody/content").properties()) {
        for (Map.Entry<String, JsonNode> example : body.getValue().path("examples").properties()) {
          JsonNode question = example.getValue().path("value");
          assertThat(described.faults(body.getValue().path("schema"), question))
              .as("%s, %s", operation.id(), example.getKey())
              .isEmpty();
          boolean first = question.equals(firstExample(body.getValue()));
          for (String form : formsOf(operation, body.getKey(), first)) {
            HeldExamples.stand();
            Response response =
                operation.method().equals("put")
                    ? ToldExamples.put(operation, body.getKey(), question)
                    : sending(body.getKey(), operation)
                        .accept(form)
                        .body(question.toString())
                        .post(operation.path());
            assertAnswered(described, operation, example.getKey(), form, response);
            sent++;
          }
        }
      }
    }
    assertThat(sent).isGreaterThan(25);
  }

  @Test
  void everythingThatIsToldCanBeTakenBackAsPromised() {
    Described described = Described.served();
    int sent = 0;
    for (Described.Operation operation : described.operations()) {
      if (operation.method().equals("delete")) {
        assertAnswered(described, operation, "", JSON, ToldExamples.delete(operation));
        sent++;
      }
    }
    assertThat(sent).isGreaterThanOrEqualTo(2);
  }

  @Test
  void everyStepWithoutABodyIsTakenAsPromised() {
    Described described = Described.served();
    int sent = 0;
    for (Described.Operation operation : described.operations()) {
      if (operation.method().equals("post") && !operation.told().has("requestBody")) {
        HeldExamples.stand();
        Response response = named(operation).accept(JSON).post(operation.path());
        assertAnswered(described, operation, "", JSON, response);
        sent++;
      }
    }
    assertThat(sent).isGreaterThanOrEqualTo(3);
  }

  @Test
  void everyOperationIsDescribedAndShown() {
    for (Described.Operation operation : Described.served().operations()) {
      assertThat(operation.told().path("description").asText()).as(operation.id()).isNotEmpty();
      assertThat(operation.told().at("/responses/200/content")).as(operation.id()).isNotEmpty();
      if (operation.told().has("requestBody")) {
        operation
            .told()
            .at("/requestBody/content")
            .forEach(body -> assertThat(body.path("examples")).isNotEmpty());
      } else if (operation.told().has("parameters")) {
        assertThat(operation.told().path("parameters"))
            .as(operation.id() + " shows no parameter's value")
            .anyMatch(
                parameter ->
                    parameter.has("examples")
                        || parameter.has("example")
                        || parameter.path("name").asText().equals("page_size"));
      }
    }
  }

  @Test
  void whatIsSentIsBounded() {
    Described described = Described.served();
    List<String> unbounded = new ArrayList<>();
    for (String question : described.sent()) {
      JsonNode schema = described.schemas().get(question);
      bounds(question, "", schema, unbounded);
      schema.path("properties").properties().stream()
          // nothing looks at what is read-only, and the size of the body bounds it
          .filter(member -> !member.getValue().path("readOnly").asBoolean())
          .forEach(member -> bounds(question, member.getKey(), member.getValue(), unbounded));
    }
    for (Described.Operation operation : described.operations()) {
      for (JsonNode parameter : operation.told().path("parameters")) {
        if (parameter.path("in").asText().equals("query")) {
          bounds(
              operation.id(), parameter.path("name").asText(), parameter.path("schema"), unbounded);
        }
      }
    }
    assertThat(unbounded).isEmpty();
  }

  @Test
  void everyMemberIsDescribedAndEveryFigureHasAUnit() {
    List<String> bare = new ArrayList<>();
    List<String> unitless = new ArrayList<>();
    Described.served()
        .schemas()
        .forEach(
            (record, schema) ->
                schema
                    .path("properties")
                    .properties()
                    .forEach(
                        member -> {
                          String name = record + "." + member.getKey();
                          if (!member.getValue().has("description")) {
                            bare.add(name);
                          }
                          if (isFigure(member.getValue())
                              && !member.getKey().matches(UNIT)
                              && !UNITLESS.contains(member.getKey())) {
                            unitless.add(name);
                          }
                        }));
    assertThat(bare).as("told in openapi/words.properties").isEmpty();
    assertThat(unitless).as("a figure without a unit at the end of its name").isEmpty();
  }

  private static void assertAnswered(
      Described described,
      Described.Operation operation,
      String example,
      String form,
      Response response) {
    String about = "%s, example %s as %s".formatted(operation.id(), example, form);
    String good = String.valueOf(response.statusCode());
    assertThat(good).as(about + ": " + response.asString()).isIn(good(operation));
    assertThat(response.contentType()).as(about).startsWith(form);
    assertThat(response.header("ETag")).as(about).isNotEmpty();
    assertThat(response.asByteArray()).as(about).isNotEmpty();
    if (form.equals(LINES)) {
      assertThat(Ask.tree(response.asString()).has("answer")).as(about).isTrue();
    } else if (form.contains("json")) {
      JsonNode schema =
          operation.told().at("/responses/" + good + "/content").path(form).path("schema");
      assertThat(described.faults(schema, Ask.tree(response.asString()))).as(about).isEmpty();
    }
  }

  /** The first example is asked for in every form; a later one may have nothing to draw. */
  private static List<String> formsOf(Described.Operation operation, String sentAs, boolean first) {
    if (sentAs.equals(LINES)) {
      return List.of(LINES);
    }
    return first
        ? forms(operation).stream().filter(form -> !form.equals(LINES)).toList()
        : List.of(JSON);
  }

  private static JsonNode firstExample(JsonNode body) {
    return body.path("examples").iterator().next().path("value");
  }

  private static List<String> forms(Described.Operation operation) {
    List<String> forms = new ArrayList<>();
    operation.told().at("/responses/200/content").fieldNames().forEachRemaining(forms::add);
    return forms;
  }

  private static Set<String> exampleNames(Described.Operation operation) {
    Set<String> names = new TreeSet<>();
    operation
        .told()
        .path("parameters")
        .forEach(parameter -> parameter.path("examples").fieldNames().forEachRemaining(names::add));
    return names;
  }

  /** What is put may be there already; what is made otherwise is new each time. */
  private static Set<String> good(Described.Operation operation) {
    if (!operation.told().at("/responses/201").isObject()) {
      return Set.of("200");
    }
    return operation.method().equals("put") ? Set.of("200", "201") : Set.of("201");
  }

  /** As one who may do everything, at the address and with the headers that are shown. */
  private static RequestSpecification named(Described.Operation operation) {
    RequestSpecification request = given().auth().oauth2(Tokens.admin());
    for (JsonNode parameter : operation.told().path("parameters")) {
      String of = parameter.path("name").asText();
      String shown = parameter.path("example").asText();
      switch (parameter.path("in").asText()) {
        case "path" -> request.pathParam(of, shown);
        case "header" -> request.header(of, shown);
        default -> {
          // a query is shown by its own examples
        }
      }
    }
    return request;
  }

  private static RequestSpecification query(Described.Operation operation, String name) {
    RequestSpecification request = named(operation);
    for (JsonNode parameter : operation.told().path("parameters")) {
      String of = parameter.path("name").asText();
      JsonNode value = parameter.path("examples").path(name).path("value");
      if (value.isArray()) {
        value.forEach(entry -> request.queryParam(of, entry.asText()));
      } else if (!value.isMissingNode()) {
        request.queryParam(of, value.asText());
      }
    }
    return request;
  }

  private static RequestSpecification sending(String type, Described.Operation operation) {
    return named(operation)
        .config(
            RestAssuredConfig.config()
                .encoderConfig(
                    EncoderConfig.encoderConfig().encodeContentTypeAs(LINES, ContentType.TEXT)))
        .contentType(type);
  }

  private static void bounds(String where, String name, JsonNode member, List<String> unbounded) {
    if (!isBounded(member)) {
      unbounded.add(where + "." + name);
    }
  }

  /** What a schema refers to is looked at by itself. */
  private static boolean isBounded(JsonNode schema) {
    if (schema.has("$ref") || schema.has("enum")) {
      return true;
    }
    JsonNode type = schema.path("type");
    Set<String> types = new TreeSet<>();
    (type.isArray() ? type : List.of(type)).forEach(one -> types.add(one.asText()));
    return types.stream()
        .allMatch(
            one ->
                switch (one) {
                  case "number", "integer" ->
                      (schema.has("minimum") || schema.has("exclusiveMinimum"))
                          && (schema.has("maximum") || schema.has("exclusiveMaximum"));
                  case "string" -> schema.has("maxLength") || isFinite(schema.path("pattern"));
                  case "array" -> schema.has("maxItems") && isBounded(schema.path("items"));
                  case "object" ->
                      schema.has("properties")
                          || schema.has("allOf")
                          // the kind's own schema bounds it
                          || schema.has("externalDocs")
                          || schema.has("maxProperties")
                              && schema.path("propertyNames").has("maxLength")
                              && isBounded(schema.path("additionalProperties"));
                  case "boolean", "null" -> true;
                  default -> schema.has("oneOf");
                });
  }

  /** Without a quantifier that has no end. */
  private static boolean isFinite(JsonNode pattern) {
    String withoutSets = pattern.asText().replaceAll("\\[[^]]*]", "x");
    return pattern.isTextual() && !withoutSets.matches(".*([*+]|,}).*");
  }

  private static boolean isFigure(JsonNode member) {
    String type = member.path("type").toString();
    return type.contains("number") || type.contains("integer");
  }
}
