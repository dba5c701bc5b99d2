package org.standoff.contract.generated;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.net.URLDecoder;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.UUID;

/**
 * A small service that keeps its description to the letter, but for one planted fault. It has one
 * calculation, and things of houses that are put, read and taken away.
 */
final class StandInService implements Service {

  /** What may be wrong with it, and what that is found as. */
  enum Plant {
    NULL_UNHANDLED(Finding.Kind.SERVER_FAULT),
    FAILS_ON_A_LARGE_NUMBER(Finding.Kind.SERVER_FAULT),
    STATUS_THAT_IS_NOT_TOLD(Finding.Kind.UNDOCUMENTED_STATUS),
    MEDIA_TYPE_THAT_IS_NOT_TOLD(Finding.Kind.UNDOCUMENTED_MEDIA_TYPE),
    NO_TAG(Finding.Kind.MISSING_HEADER),
    RETIRES_WITHOUT_NOTICE(Finding.Kind.MISSING_HEADER),
    MEMBER_OF_ANOTHER_TYPE(Finding.Kind.BODY_AGAINST_SCHEMA),
    MEMBER_THAT_IS_NOT_TOLD(Finding.Kind.BODY_AGAINST_SCHEMA),
    REFUSAL_WITHOUT_A_PROBLEM(Finding.Kind.NO_PROBLEM),
    REFUSAL_WITH_A_NUMBER_IN_WORDS(Finding.Kind.NUMBER_IN_WORDS_ALONE),
    TAKES_WHAT_IS_OUT_OF_RANGE(Finding.Kind.INVALID_ACCEPTED),
    TAKES_UNKNOWN_MEMBERS(Finding.Kind.INVALID_ACCEPTED),
    TAKES_UNKNOWN_PARAMETERS(Finding.Kind.INVALID_ACCEPTED),
    REFUSES_THE_LIMIT_ITSELF(Finding.Kind.VALID_REFUSED),
    REFUSES_ITS_EXAMPLE(Finding.Kind.EXAMPLE_REFUSED),
    TELLS_NEW_AS_CHANGED(Finding.Kind.NOT_TOLD_AS_NEW),
    CHANGED_WITHOUT_A_CONDITION(Finding.Kind.WRONG_REFUSAL),
    CHANGED_THOUGH_STALE(Finding.Kind.WRONG_REFUSAL),
    ANY_METHOD(Finding.Kind.WRONG_REFUSAL),
    ANY_MEDIA_TYPE_SENT(Finding.Kind.WRONG_REFUSAL),
    ANY_MEDIA_TYPE_WANTED(Finding.Kind.WRONG_REFUSAL),
    ANY_SIZE(Finding.Kind.WRONG_REFUSAL),
    HALF_A_BODY_IS_READ(Finding.Kind.WRONG_REFUSAL),
    NO_TOKEN_NEEDED(Finding.Kind.UNGUARDED),
    OLD_TOKENS_HOLD(Finding.Kind.UNGUARDED),
    READ_BY_ANOTHER_HOUSE(Finding.Kind.LEAK),
    LISTED_TO_ANOTHER_HOUSE(Finding.Kind.LEAK),
    CHANGED_BY_ANOTHER_HOUSE(Finding.Kind.LEAK),
    REFUSES_WHAT_IT_TOLD(Finding.Kind.EXAMPLE_REFUSED),
    STAYS_AFTER_DELETE(Finding.Kind.STILL_THERE),
    DELETED_TWICE(Finding.Kind.DONE_TWICE),
    STORED_BEFORE_IT_IS_REFUSED(Finding.Kind.LEFT_BEHIND);

    private final Finding.Kind found;

    Plant(Finding.Kind found) {
      this.found = found;
    }

    Finding.Kind found() {
      return found;
    }
  }

  static final String DESCRIPTION =
      """
      openapi: 3.1.0
      info: {title: A stand-in, version: '1'}
      paths:
        /level:
          post:
            operationId: postLevel
            parameters:
            - {name: round, in: query, schema: {type: boolean}}
            requestBody:
              required: true
              content:
                application/json:
                  schema: {$ref: '#/components/schemas/Question'}
                  examples:
                    quiet: {value: {gain_db: 12, note: soft, at: [{x_m: 1}]}}
            responses:
              '200':
                description: The level
                headers: {ETag: {schema: {type: string}}}
                content: {application/json: {schema: {$ref: '#/components/schemas/Answer'}}}
              '400': {$ref: '#/components/responses/Problem'}
              '406': {$ref: '#/components/responses/Problem'}
              '413': {$ref: '#/components/responses/Problem'}
              '415': {$ref: '#/components/responses/Problem'}
        /houses/{house}/things:
          parameters:
          - {name: house, in: path, required: true, schema: {type: string}, example: north}
          get:
            operationId: listThings
            security: [{bearer: []}]
            responses:
              '200':
                description: Those that the caller may see
                headers: {ETag: {schema: {type: string}}}
                content: {application/json: {schema: {$ref: '#/components/schemas/Things'}}}
              '304': {description: Known}
              '400': {$ref: '#/components/responses/Problem'}
              '401': {$ref: '#/components/responses/Problem'}
              '404': {$ref: '#/components/responses/Problem'}
              '406': {$ref: '#/components/responses/Problem'}
        /houses/{house}/things/{thing}:
          parameters:
          - {name: house, in: path, required: true, schema: {type: string}, example: north}
          - {name: thing, in: path, required: true, schema: {type: string}, example: t1}
          get:
            operationId: getThing
            deprecated: true
            security: [{bearer: []}]
            responses:
              '200': {$ref: '#/components/responses/Thing'}
              '304': {description: Known}
              '400': {$ref: '#/components/responses/Problem'}
              '401': {$ref: '#/components/responses/Problem'}
              '404': {$ref: '#/components/responses/Problem'}
              '406': {$ref: '#/components/responses/Problem'}
          put:
            operationId: putThing
            security: [{bearer: []}]
            parameters:
            - {name: If-Match, in: header, schema: {type: string}}
            - {name: If-None-Match, in: header, schema: {type: string}}
            requestBody:
              required: true
              content:
                application/json:
                  schema: {$ref: '#/components/schemas/Thing'}
                  examples:
                    heavy: {value: {name: t1, weight_kg: 2}}
            responses:
              '200': {$ref: '#/components/responses/Thing'}
              '201': {$ref: '#/components/responses/Thing'}
              '400': {$ref: '#/components/responses/Problem'}
              '401': {$ref: '#/components/responses/Problem'}
              '404': {$ref: '#/components/responses/Problem'}
              '406': {$ref: '#/components/responses/Problem'}
              '412': {$ref: '#/components/responses/Problem'}
              '413': {$ref: '#/components/responses/Problem'}
              '415': {$ref: '#/components/responses/Problem'}
              '428': {$ref: '#/components/responses/Problem'}
          delete:
            operationId: deleteThing
            security: [{bearer: []}]
            responses:
              '204': {description: Gone}
              '400': {$ref: '#/components/responses/Problem'}
              '401': {$ref: '#/components/responses/Problem'}
              '404': {$ref: '#/components/responses/Problem'}
              '412': {$ref: '#/components/responses/Problem'}
              '428': {$ref: '#/components/responses/Problem'}
      components:
        responses:
          Problem:
            description: A problem
            content:
              application/problem+json: {schema: {$ref: '#/components/schemas/Problem'}}
          Thing:
            description: The thing
            headers: {ETag: {schema: {type: string}}}
            content: {application/json: {schema: {$ref: '#/components/schemas/Thing'}}}
        schemas:
          Question:
            type: object
            required: [gain_db]
            properties:
              gain_db: {type: number, minimum: -20, maximum: 60}
              note: {type: string, maxLength: 20}
              at: {type: array, maxItems: 3, items: {$ref: '#/components/schemas/Place'}}
          Place:
            type: object
            required: [x_m]
            properties:
              x_m: {type: number, minimum: 0, maximum: 100}
          Answer:
            type: object
            required: [level_db]
            properties:
              level_db: {type: number}
          Thing:
            type: object
            required: [name, weight_kg]
            properties:
              name: {type: string, minLength: 1, maxLength: 40}
              weight_kg: {type: number, minimum: 0, maximum: 50}
              key: {type: string, readOnly: true}
          Things:
            type: object
            required: [items]
            properties:
              items: {type: array, items: {$ref: '#/components/schemas/Thing'}}
          Problem:
            type: object
            required: [type, title, status, detail, instance, code]
            properties:
              type: {type: string}
              title: {type: string}
              status: {type: integer}
              detail: {type: string}
              instance: {type: string}
              code: {type: string}
      """;

  private static final ObjectMapper STRICT =
      new ObjectMapper()
          .enable(JsonParser.Feature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS);
  private static final int LARGEST = 1 << 20;

  private final Api api = Api.of(DESCRIPTION);
  private final Map<String, JsonNode> things = new HashMap<>();
  private final Plant plant;

  /**
   * @param plant null for none
   */
  StandInService(Plant plant) {
    this.plant = plant;
  }

  @Override
  public synchronized Reply send(Call call) {
    try {
      return answer(call);
    } catch (Refusal refusal) {
      return problem(refusal);
    } catch (RuntimeException failure) {
      return problem(new Refusal(500));
    }
  }

  private Reply answer(Call call) {
    String[] target = call.target().split("\\?", 2);
    String path = target[0];
    boolean level = path.equals("/level");
    String[] parts = path.split("/");
    boolean things = parts.length >= 4 && parts[1].equals("houses") && parts[3].equals("things");
    boolean list = things && parts.length == 4;
    boolean thing = things && parts.length == 5;
    if (!level && !list && !thing) {
      throw new Refusal(404);
    }
    Set<String> methods =
        level
            ? Set.of("POST")
            : list ? Set.of("GET", "HEAD") : Set.of("GET", "HEAD", "PUT", "DELETE");
    if (!methods.contains(call.method()) && plant != Plant.ANY_METHOD) {
      throw new Refusal(405, Map.of("Allow", String.join(", ", methods)));
    }
    refuseUnknown(target.length == 2 ? target[1] : "", level ? Set.of("round") : Set.of());
    if (!call.method().equals("DELETE")) {
      checkAccept(call);
    }
    if (list) {
      return list(call, parts[2]);
    }
    return level ? level(call) : thing(call, parts[2], parts[4]);
  }

  private Reply level(Call call) {
    JsonNode body = read(call, "Question");
    BigDecimal gain = body.path("gain_db").decimalValue();
    if (plant == Plant.STATUS_THAT_IS_NOT_TOLD && gain.signum() < 0) {
      throw new Refusal(418);
    }
    if (plant == Plant.REFUSES_ITS_EXAMPLE && gain.intValue() == 12) {
      throw new Refusal(400);
    }
    if (plant == Plant.REFUSES_THE_LIMIT_ITSELF && gain.intValue() == 60) {
      throw new Refusal(400);
    }
    if (plant == Plant.FAILS_ON_A_LARGE_NUMBER && body.at("/at/0/x_m").intValue() == 100) {
      throw new IllegalStateException("too far");
    }
    ObjectNode answer = STRICT.createObjectNode();
    if (plant == Plant.MEMBER_OF_ANOTHER_TYPE && gain.signum() == 0) {
      answer.put("level_db", "none");
    } else {
      answer.put("level_db", gain);
    }
    if (plant == Plant.MEMBER_THAT_IS_NOT_TOLD && gain.signum() < 0) {
      answer.put("secret", 1);
    }
    return good(200, answer);
  }

  private Reply list(Call call, String house) {
    String owner = owner(call);
    if (things.keySet().stream().noneMatch(key -> key.startsWith(house + "/"))) {
      throw new Refusal(404);
    }
    ObjectNode page = STRICT.createObjectNode();
    ArrayNode items = page.putArray("items");
    if (owner.equals(house) || plant == Plant.LISTED_TO_ANOTHER_HOUSE) {
      things.forEach(
          (key, thing) -> {
            if (key.startsWith(house + "/")) {
              items.add(thing);
            }
          });
    }
    return read(call, page);
  }

  private Reply read(Call call, JsonNode there) {
    return "*".equals(call.headers().get("If-None-Match"))
        ? new Reply(304, Map.of("Request-Id", "0"), new byte[0])
        : good(200, there);
  }

  private Reply thing(Call call, String house, String name) {
    String owner = owner(call);
    boolean reading = Set.of("GET", "HEAD").contains(call.method());
    Plant open = reading ? Plant.READ_BY_ANOTHER_HOUSE : Plant.CHANGED_BY_ANOTHER_HOUSE;
    if (!owner.equals(house) && !owner.isEmpty() && plant != open) {
      throw new Refusal(404);
    }
    String key = house + "/" + name;
    if (reading) {
      return read(call, there(key));
    }
    if (call.method().equals("DELETE")) {
      return taken(call, key);
    }
    if (plant == Plant.STORED_BEFORE_IT_IS_REFUSED) {
      things.put(key, STRICT.createObjectNode().put("name", name).put("weight_kg", 0));
    }
    JsonNode body = read(call, "Thing");
    checkConditions(call, key);
    if (body.has("key") && (plant == Plant.REFUSES_WHAT_IT_TOLD || isOfAnother(body, key))) {
      throw new Refusal(400);
    }
    ((ObjectNode) body).put("key", key);
    boolean isNew = things.put(key, body) == null && plant != Plant.TELLS_NEW_AS_CHANGED;
    return good(isNew ? 201 : 200, body);
  }

  /** Null counts as left out. */
  private static boolean isOfAnother(JsonNode body, String key) {
    return !body.path("key").isNull() && !body.path("key").asText().equals(key);
  }

  private Reply taken(Call call, String key) {
    if (plant == Plant.DELETED_TWICE && !things.containsKey(key)) {
      return new Reply(204, Map.of("Request-Id", "0"), new byte[0]);
    }
    there(key);
    checkConditions(call, key);
    if (plant != Plant.STAYS_AFTER_DELETE) {
      things.remove(key);
    }
    return new Reply(204, Map.of("Request-Id", "0"), new byte[0]);
  }

  private JsonNode there(String key) {
    if (!things.containsKey(key)) {
      throw new Refusal(404);
    }
    return things.get(key);
  }

  private void checkConditions(Call call, String key) {
    String match = call.headers().get("If-Match");
    String noneMatch = call.headers().get("If-None-Match");
    boolean readable = match == null || match.matches("\\*|(W/)?\"[^\",; ]*\"");
    if (!readable || noneMatch != null && !noneMatch.equals("*")) {
      throw new Refusal(400);
    }
    boolean onlyNew = noneMatch != null;
    JsonNode there = things.get(key);
    boolean any = "*".equals(match) && there != null;
    boolean stale = match != null && !any && !match.equals(tag(there));
    if (onlyNew && there != null || stale && plant != Plant.CHANGED_THOUGH_STALE) {
      throw new Refusal(412);
    }
    boolean silent = !onlyNew && match == null && there != null;
    if (silent && plant != Plant.CHANGED_WITHOUT_A_CONDITION) {
      throw new Refusal(428);
    }
  }

  /** The house of the token; empty where none is known. */
  private String owner(Call call) {
    String given = call.headers().getOrDefault("Authorization", "");
    boolean old = given.equals("Bearer old") && plant == Plant.OLD_TOKENS_HOLD;
    if (given.equals("Bearer north") || given.equals("Bearer south")) {
      return given.substring("Bearer ".length());
    }
    if (old || plant == Plant.NO_TOKEN_NEEDED) {
      return "";
    }
    throw new Refusal(401);
  }

  private JsonNode read(Call call, String schema) {
    String type = call.headers().getOrDefault("Content-Type", "").replaceFirst(";.*", "");
    if (!type.equals("application/json") && plant != Plant.ANY_MEDIA_TYPE_SENT) {
      throw new Refusal(415);
    }
    if (call.body().length > LARGEST && plant != Plant.ANY_SIZE) {
      throw new Refusal(413);
    }
    JsonNode body = parse(new String(call.body(), UTF_8));
    if (plant == Plant.NULL_UNHANDLED && body.path("note").isNull()) {
      throw new IllegalStateException("null");
    }
    JsonNode told =
        api.resolve(STRICT.createObjectNode().put("$ref", "#/components/schemas/" + schema));
    List<String> faults = api.faultsAsRead(told, body);
    if (plant == Plant.TAKES_WHAT_IS_OUT_OF_RANGE) {
      faults = faults.stream().filter(fault -> !fault.contains("maximum")).toList();
    }
    if (plant == Plant.TAKES_UNKNOWN_MEMBERS) {
      faults = faults.stream().filter(fault -> !fault.contains("additional")).toList();
    }
    if (!faults.isEmpty()) {
      throw new Refusal(400);
    }
    return body;
  }

  private JsonNode parse(String text) {
    try {
      JsonNode body = (plant == Plant.HALF_A_BODY_IS_READ ? Api.JSON : STRICT).readTree(text);
      if (!body.isMissingNode()) {
        return body;
      }
    } catch (JsonProcessingException | StackOverflowError unreadable) {
      throw new Refusal(400);
    }
    throw new Refusal(400);
  }

  private void refuseUnknown(String query, Set<String> known) {
    Map<String, String> given = new HashMap<>();
    for (String part : query.isEmpty() ? new String[0] : query.split("&")) {
      String[] both = part.split("=", 2);
      String name = URLDecoder.decode(both[0], UTF_8);
      boolean twice = given.put(name, both[1]) != null;
      boolean value = !name.equals("round") || both[1].matches("true|false");
      boolean unknown = !known.contains(name) && plant != Plant.TAKES_UNKNOWN_PARAMETERS;
      if (unknown || twice || !value) {
        throw new Refusal(400);
      }
    }
  }

  private void checkAccept(Call call) {
    String wanted = call.headers().getOrDefault("Accept", "*/*").replaceFirst(";.*", "");
    boolean other = wanted.matches("image/.*|audio/.*|x/y.*");
    if (other && plant != Plant.ANY_MEDIA_TYPE_WANTED) {
      throw new Refusal(406);
    }
  }

  private Reply good(int status, JsonNode body) {
    Map<String, String> headers = new HashMap<>();
    headers.put("Request-Id", "0");
    headers.put(
        "Content-Type",
        plant == Plant.MEDIA_TYPE_THAT_IS_NOT_TOLD ? "text/json" : "application/json");
    if (plant != Plant.NO_TAG) {
      headers.put("ETag", tag(body));
    }
    if (plant != Plant.RETIRES_WITHOUT_NOTICE) {
      headers.put("Deprecation", "@1");
      headers.put("Sunset", "Thu, 01 Jan 1970 00:00:02 GMT");
    }
    return new Reply(status, headers, body.toString().getBytes(UTF_8));
  }

  private static String tag(JsonNode body) {
    return body == null ? "" : '"' + Integer.toHexString(body.toString().hashCode()) + '"';
  }

  private Reply problem(Refusal refusal) {
    String id = UUID.randomUUID().toString();
    Map<String, String> headers = new HashMap<>(refusal.headers);
    headers.put("Request-Id", id);
    boolean bare = plant == Plant.REFUSAL_WITHOUT_A_PROBLEM && refusal.status == 406;
    headers.put("Content-Type", bare ? "text/plain" : "application/problem+json");
    ObjectNode body = STRICT.createObjectNode();
    body.put("type", "/problems/some").put("title", "Some problem").put("status", refusal.status);
    boolean counted = plant == Plant.REFUSAL_WITH_A_NUMBER_IN_WORDS && refusal.status == 406;
    body.put("detail", counted ? "At most 7" : "Some");
    body.put("instance", "urn:uuid:" + id).put("code", "SOME");
    return new Reply(refusal.status, headers, body.toString().getBytes(UTF_8));
  }

  /** Ends a request early. */
  private static final class Refusal extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int status;
    private final transient Map<String, String> headers;

    Refusal(int status) {
      this(status, Map.of());
    }

    Refusal(int status, Map<String, String> headers) {
      super("status " + status, null, false, false);
      this.status = status;
      this.headers = headers;
    }
  }
}
