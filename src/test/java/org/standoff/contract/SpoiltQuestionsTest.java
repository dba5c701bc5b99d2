package org.standoff.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.standoff.fixture.Ask;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.ScenarioHouses;

/**
 * Good questions, spoilt at random places in random ways (seeded, so that a failure comes again):
 * each is answered, or refused with a problem that says where it is wrong. None is a fault of ours.
 */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class SpoiltQuestionsTest {
  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final long SEED = 20_260_131;
  private static final int TIMES = 90;

  /** What never belongs where it is put: wrong types, limits of numbers, hostile texts. */
  private static final List<JsonNode> STRANGE =
      List.of(
          NODES.nullNode(),
          NODES.booleanNode(true),
          NODES.numberNode(0),
          NODES.numberNode(-1),
          NODES.numberNode(Double.MAX_VALUE),
          NODES.numberNode(-Double.MAX_VALUE),
          NODES.numberNode(Double.MIN_VALUE),
          NODES.numberNode(Long.MAX_VALUE),
          NODES.numberNode(180),
          NODES.numberNode(0.5),
          NODES.textNode(""),
          NODES.textNode("omni"),
          NODES.textNode("NaN"),
          NODES.textNode("core/kik"),
          NODES.textNode("/"),
          NODES.textNode("core/kick/inside"),
          NODES.textNode("../../secret"),
          NODES.textNode("\u0000"),
          NODES.textNode("=1+1"),
          NODES.textNode("a".repeat(9_000)),
          NODES.arrayNode(),
          NODES.arrayNode().add(NODES.nullNode()),
          NODES.arrayNode().add(NODES.arrayNode()),
          NODES.objectNode(),
          NODES.objectNode().put("x", 1));

  @BeforeEach
  void standTheHousesOfTheDemo() {
    ScenarioHouses.ofTheExamples();
  }

  @ParameterizedTest
  @EnumSource(Question.class)
  void theWholeQuestionsAreInOrder(Question question) {
    question.ask().answer();
  }

  @Test
  void noneIsAFaultOfOurs() {
    Random random = new Random(SEED);
    Map<Question, Integer> answered = new EnumMap<>(Question.class);
    Map<Question, Integer> refused = new EnumMap<>(Question.class);
    for (Question question : Question.values()) {
      for (int i = 0; i < TIMES; i++) {
        ObjectNode body = question.body();
        for (int times = 1 + random.nextInt(3); times > 0; times--) {
          spoil(body, random);
        }
        Response response = Ask.post(question.path(), body.toString());
        String told = body + "\n" + response.asString();
        if (response.statusCode() == 200) {
          answered.merge(question, 1, Integer::sum);
        } else {
          refused.merge(question, 1, Integer::sum);
          assertThat(response.statusCode()).as(told).isIn(400, 422);
          assertThat(response.contentType()).isEqualTo("application/problem+json");
          JsonNode errors = Ask.tree(response.asString()).path("errors");
          assertThat(errors).as(told).isNotEmpty().allMatch(fault -> fault.has("pointer"));
        }
      }
    }
    assertThat(answered.values())
        .as("answered")
        .hasSize(Question.values().length)
        .allMatch(count -> count >= 2);
    assertThat(refused.values())
        .as("refused")
        .hasSize(Question.values().length)
        .allMatch(count -> count >= 60);
  }

  private static void spoil(ObjectNode body, Random random) {
    List<Place> places = new ArrayList<>();
    collect(body, places);
    if (places.isEmpty()) {
      return;
    }
    Place place = places.get(random.nextInt(places.size()));
    switch (random.nextInt(5)) {
      case 0 -> place.remove();
      case 1 -> place.set(STRANGE.get(random.nextInt(STRANGE.size())).deepCopy());
      case 2 -> place.set(places.get(random.nextInt(places.size())).get().deepCopy());
      case 3 -> place.beside(STRANGE.get(random.nextInt(STRANGE.size())).deepCopy());
      default -> place.set(moved(place.get(), random));
    }
  }

  /** A number pushed towards or over its limits; anything else turned into a text. */
  private static JsonNode moved(JsonNode value, Random random) {
    if (!value.isNumber()) {
      return NODES.textNode(value.asText() + "x");
    }
    double[] ways = {2, 10, 0.1, -1, 1000, 0, 0.999, 1e-6};
    return NODES.numberNode(value.asDouble() * ways[random.nextInt(ways.length)]);
  }

  private static void collect(JsonNode node, List<Place> places) {
    if (node instanceof ObjectNode object) {
      // by name: the order of Map.of, from which questions are made, changes from run to run
      for (String name : new TreeSet<>(object.propertyStream().map(Map.Entry::getKey).toList())) {
        places.add(new Place(object, name, -1));
        collect(object.get(name), places);
      }
    } else if (node instanceof ArrayNode list) {
      for (int i = 0; i < list.size(); i++) {
        places.add(new Place(list, "", i));
        collect(list.get(i), places);
      }
    }
  }

  /** A member of an object, or an entry of a list. */
  private record Place(JsonNode parent, String name, int index) {
    JsonNode get() {
      return index < 0 ? parent.get(name) : parent.get(index);
    }

    void set(JsonNode value) {
      if (parent instanceof ObjectNode object) {
        object.set(name, value);
      } else {
        ((ArrayNode) parent).set(index, value);
      }
    }

    void remove() {
      if (parent instanceof ObjectNode object) {
        object.remove(name);
      } else {
        ((ArrayNode) parent).remove(index);
      }
    }

    void beside(JsonNode value) {
      if (parent instanceof ObjectNode object) {
        object.set(name + "x", value);
      } else {
        ((ArrayNode) parent).add(value);
      }
    }
  }
}
