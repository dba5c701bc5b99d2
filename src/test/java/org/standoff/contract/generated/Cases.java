package org.standoff.contract.generated;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Stream;

/** Makes the calls to every operation of a description. */
final class Cases {
  private static final JsonNodeFactory NODES = JsonNodeFactory.withExactBigDecimals(true);
  private static final String LINES = "application/x-ndjson";
  private static final Set<String> METHODS =
      Set.of("GET", "POST", "PUT", "PATCH", "DELETE", "TRACE");
  private static final int LONGEST_IN_AN_ADDRESS = 1_500;
  private static final int MOST_AT_ONCE = 3;

  /** None of them is a text that a body may give as a name; then something would have it. */
  private static final List<String> STRANGE_NAMES =
      List.of(
          "nowhere",
          "-",
          "00",
          "'",
          "a b",
          "%",
          "%00",
          "é",
          "🥁",
          "core/kick",
          "..;",
          "<b>",
          "undefined",
          "x".repeat(1_000),
          "NOWHERE",
          "\u0001",
          "*",
          "{item}");

  /** Of a body; the description tells both in its own words. */
  private static final int DEEPEST = 32;

  private static final int LONGEST_TEXT = 10_000;

  private static final BigDecimal LARGEST = BigDecimal.valueOf(Long.MAX_VALUE);

  /** Good only if the service gave them. */
  private static final Set<String> OPAQUE = Set.of("page_token", "after");

  /** No tag of anything, no key, no list of them. */
  private static final String STRANGE = "\"\\, ;=%x";

  private final Api api;
  private final Values values;
  private final Spoiling spoiling;
  private final Credentials credentials;
  private final Ready ready;
  private final long seed;

  /** Computing costs the most: of what will be answered no more than this of each operation. */
  private final int mostAnswered;

  Cases(Api api, Credentials credentials, long seed, int mostAnswered) {
    this.api = api;
    this.values = new Values(api);
    this.spoiling = new Spoiling(api);
    this.credentials = credentials;
    this.ready = new Ready(credentials);
    this.seed = seed;
    this.mostAnswered = mostAnswered;
  }

  /** What every operation gets, however many calls are wanted. */
  List<Case> fixed(Api.Operation operation) {
    List<Case> all = new ArrayList<>();
    List<Base> bases = Base.of(operation, values, credentials);
    for (Base base : bases) {
      add(all, base, "example " + base.name(), base.call(), Expected.ANSWERED);
    }
    Base first = bases.get(0);
    forms(first, all);
    credentials(first, all);
    methods(first, all);
    if (first.body() != null) {
      bodies(first, all);
    }
    bases.stream().filter(Base::isSheet).forEach(base -> sheets(base, all));
    if (operation.bodies().containsKey(LINES)) {
      bases.stream().filter(base -> LINES.equals(base.mediaType())).forEach(b -> lines(b, all));
    }
    return all;
  }

  private void forms(Base base, List<Case> all) {
    Api.Operation operation = base.operation();
    for (String form : operation.forms()) {
      if (!form.equals(LINES)) {
        add(all, base, "as " + form, base.call().with("Accept", form), Expected.ANSWERED);
      }
    }
    if (!operation.forms().isEmpty()) {
      for (String other : List.of("image/webp", "audio/mpeg;q=0.5", "x/y, z/*")) {
        Call call = base.call().with("Accept", other);
        add(all, base, "as " + other, call, Expected.NOT_ACCEPTABLE);
      }
    }
    add(all, base, "accepting all", base.call().with("Accept", "*/*"), Expected.ANSWERED);
    for (String other : List.of("garbage", "application/json;q=abc", ",", "a/b/c", "*")) {
      Call call = base.call().with("Accept", other);
      add(all, base, "accepting " + other, call, Expected.ACCEPTED_SOMEHOW);
    }
    if (operation.method().equals("GET")) {
      add(all, base, "by HEAD", base.call().by("HEAD"), Expected.ANSWERED);
      if (operation.response(304).isPresent()) {
        Call known = base.call().with("If-None-Match", "*");
        add(all, base, "known already", known, Expected.NOT_MODIFIED);
      }
    }
    for (String header : List.of("If-None-Match", "If-Match")) {
      // on a change it has to say something; elsewhere it is not looked at, or matches nothing
      Expected expected = operation.isConditional() ? Expected.REFUSED : Expected.ANSWERED;
      add(all, base, "with a strange " + header, base.call().with(header, STRANGE), expected);
    }
    for (String header :
        List.of(
            "Range",
            "Accept-Encoding",
            "Accept-Language",
            "Request-Id",
            "Origin",
            "traceparent",
            "Prefer",
            "Cookie",
            "X-HTTP-Method-Override")) {
      Call call = base.call().with(header, STRANGE);
      add(all, base, "with a strange " + header, call, Expected.ANSWERED);
    }
  }

  private void credentials(Base base, List<Case> all) {
    Api.Operation operation = base.operation();
    if (!operation.isGuarded()) {
      return;
    }
    Call bare = base.call();
    all.add(new Case(operation, "without credentials", bare, Expected.UNAUTHORIZED));
    for (String strange : List.of("Bearer", "Bearer x", "Bearer a.b.c", "Basic eDp5", "🥁")) {
      Call call = bare.with("Authorization", strange.replace("🥁", "x y z"));
      all.add(new Case(operation, "with " + strange, call, Expected.UNAUTHORIZED));
    }
    credentials
        .expired(operation)
        .map(token -> Credentials.with(token, bare))
        .ifPresent(
            call -> all.add(new Case(operation, "out of date", call, Expected.UNAUTHORIZED)));
    credentials
        .foreign(operation)
        .map(token -> Credentials.with(token, bare))
        .ifPresent(
            call ->
                all.add(new Case(operation, "of another house", call, Expected.KEPT_FROM_OTHERS)));
  }

  private void methods(Base base, List<Case> all) {
    List<String> offered = api.methodsOf(base.operation().path());
    if (!offered.get(0).equals(base.operation().method())) {
      return;
    }
    for (String method : METHODS.stream().sorted().toList()) {
      if (!offered.contains(method)) {
        add(all, base, "by " + method, base.call().by(method), Expected.NO_SUCH_METHOD);
      }
    }
  }

  private void bodies(Base base, List<Case> all) {
    for (String type :
        List.of(
            "text/plain",
            "application/xml",
            "multipart/form-data; boundary=x",
            "image/png",
            "application/x-www-form-urlencoded",
            "application/jsonx",
            "garbage",
            "/",
            "*/*")) {
      Call call = base.call().with("Content-Type", type);
      add(all, base, "sent as " + type, call, Expected.UNSUPPORTED);
    }
    // application/json has no such parameter (RFC 8259, 11): passed over, or not known
    for (String type : List.of("application/json;charset=no-such", "application/json;x")) {
      Call call = base.call().with("Content-Type", type);
      add(all, base, "sent as " + type, call, Expected.TAKEN_OR_UNSUPPORTED);
    }
    Call untyped = base.call().without("Content-Type");
    add(all, base, "sent as nothing", untyped, Expected.TAKEN_OR_UNSUPPORTED);
    if (base.mediaType().endsWith("json")) {
      Texts.malformed(Texts.of(base.body()))
          .forEach(
              (what, bytes) ->
                  add(all, base, "malformed: " + what, sending(base, bytes), Expected.MALFORMED));
      Expected bare = base.operation().wantsABody() ? Expected.MALFORMED : Expected.ANSWERED;
      add(all, base, "an empty body", sending(base, new byte[0]), bare);
    }
    add(all, base, "too large", sending(base, Texts.tooLarge()), Expected.TOO_LARGE);
  }

  /** What stands in a sheet, no schema says. */
  private void sheets(Base base, List<Case> all) {
    List<String> texts = new ArrayList<>();
    values.hostile(schema(base)).stream()
        .filter(JsonNode::isTextual)
        .map(JsonNode::asText)
        .filter(Cases::canBeSent)
        .forEach(texts::add);
    texts.addAll(Texts.spoilt(base.text()));
    for (String text : texts) {
      Call call = sending(base, text.getBytes(StandardCharsets.UTF_8));
      add(all, base, "a strange sheet", call, Expected.TAKEN_OR_REFUSED);
    }
    add(all, base, "no UTF-8", sending(base, new byte[] {'a', (byte) 0xff}), Expected.REFUSED);
  }

  private void lines(Base base, List<Case> all) {
    String good = Texts.of(base.body());
    for (String batch :
        List.of(
            good + "\n" + good,
            "{\n" + good,
            good + "\r\n\r\n{\"a\": NaN}\nnull\n[]\n" + good,
            "[".repeat(1_000) + "\n" + good)) {
      Call call = sending(base, batch.getBytes(StandardCharsets.UTF_8));
      add(all, base, "a batch", call, Expected.ANSWERED);
    }
    byte[] many = "{}\n".repeat(1_001).getBytes(StandardCharsets.UTF_8);
    add(all, base, "too many lines", sending(base, many), Expected.REFUSED);
  }

  private static Call sending(Base base, byte[] bytes) {
    Call call = base.call();
    return new Call(call.method(), call.target(), call.headers(), bytes);
  }

  /**
   * Every change of one thing: one of every member and parameter, then another of each, and so on,
   * in an order of its own; then changes of several things at once, and no end of them where there
   * is a body. Each is made when it is asked for.
   */
  Iterator<Case> changed(Api.Operation operation) {
    Random random = new Random(seed + operation.id().hashCode());
    List<Base> bases = Base.of(operation, values, credentials);
    List<Way> ways = new ArrayList<>();
    List<Changing> bodies = new ArrayList<>();
    for (Base base : bases) {
      parameters(base, ways);
      if (base.body() != null && base.mediaType().endsWith("json") && !isLines(base)) {
        bodies.add(new Changing(base, spoiling.waysToSpoil(schema(base), base.body())));
      }
    }
    bodies.forEach(
        changing ->
            changing.ways.forEach(
                way -> ways.add(new Way(way.place(), () -> changed(changing.base, way)))));
    Stream<Supplier<Case>> each = byTurns(ways, random).stream().map(Way::make);
    Stream<Supplier<Case>> more =
        bodies.isEmpty()
            ? Stream.empty()
            : Stream.generate(() -> () -> severalChanges(bodies, random));
    Sparing sparing = new Sparing();
    return Stream.concat(each, more)
        .map(Supplier::get)
        .filter(Objects::nonNull)
        .filter(sparing::mayBeSent)
        .iterator();
  }

  /**
   * A change of one thing.
   *
   * @param place the member or parameter
   */
  private record Way(String place, Supplier<Case> make) {}

  private static List<Way> byTurns(List<Way> ways, Random random) {
    Collections.shuffle(ways, random);
    Map<String, Integer> seen = new HashMap<>();
    SortedMap<Integer, List<Way>> turns = new TreeMap<>();
    for (Way way : ways) {
      int turn = seen.merge(way.place(), 1, Integer::sum);
      turns.computeIfAbsent(turn, first -> new ArrayList<>()).add(way);
    }
    return turns.values().stream().flatMap(List::stream).toList();
  }

  private record Changing(Base base, List<Spoiling.Spoilt> ways) {}

  private Case changed(Base base, Spoiling.Spoilt way) {
    return withBody(base, way.applyTo(base.body()), way.label());
  }

  private Case severalChanges(List<Changing> bodies, Random random) {
    Changing which = bodies.get(random.nextInt(bodies.size()));
    JsonNode body = which.base.body();
    List<String> labels = new ArrayList<>();
    for (int times = 2 + random.nextInt(MOST_AT_ONCE - 1); times > 0; times--) {
      Spoiling.Spoilt way = which.ways.get(random.nextInt(which.ways.size()));
      body = way.applyTo(body);
      labels.add(way.label());
    }
    return withBody(which.base, body, String.join(" and ", labels));
  }

  /** Bodies that will be computed cost the most: of each operation no more than so many. */
  private final class Sparing {
    private int answered;

    boolean mayBeSent(Case one) {
      return one.call().body() == null
          || one.expected() == Expected.REFUSED
          || one.expected() == Expected.MALFORMED
          || answered++ < mostAnswered;
    }
  }

  private static boolean isLines(Base base) {
    return LINES.equals(base.mediaType());
  }

  private static JsonNode schema(Base base) {
    return base.operation().bodies().get(base.mediaType()).path("schema");
  }

  private Case withBody(Base base, JsonNode body, String label) {
    if (body == null) {
      return null;
    }
    Call spoilt = base.withBody(body).call();
    // several long texts together can be more than any body may have
    Expected expected =
        Texts.isTooLarge(spoilt.body()) ? Expected.TOO_LARGE : expectation(schema(base), body);
    Call call = ready.whole(base.operation(), spoilt, expected);
    return new Case(base.operation(), base.name() + ": " + label, call, expected);
  }

  private Expected expectation(JsonNode schema, JsonNode body) {
    if (depth(body) > DEEPEST) {
      return Expected.MALFORMED;
    }
    if (isDelicate(body)) {
      return Expected.TAKEN_OR_REFUSED;
    }
    if (!api.faultsAsRead(schema, body).isEmpty()) {
      return Expected.REFUSED;
    }
    boolean left = isBeyond(body) || api.tellsReadOnly(schema, body);
    return left ? Expected.TAKEN_OR_REFUSED : Expected.UNDERSTOOD;
  }

  private static int depth(JsonNode node) {
    return node.isContainerNode()
        ? 1 + node.valueStream().mapToInt(Cases::depth).max().orElse(0)
        : 0;
  }

  /** Longer texts, and larger numbers, than a reader has to take, whatever the schema says. */
  private static boolean isBeyond(JsonNode node) {
    if (node.isContainerNode()) {
      return node.valueStream().anyMatch(Cases::isBeyond);
    }
    return node.isNumber()
        ? node.decimalValue().abs().compareTo(LARGEST) > 0
        : node.asText().length() > LONGEST_TEXT;
  }

  /** Numbers that a binary64 rounds to another side of a limit are the reader's affair. */
  static boolean isDelicate(JsonNode node) {
    if (node.isNumber()) {
      BigDecimal exact = node.decimalValue();
      double read = exact.doubleValue();
      return exact.precision() > 17 || (read == 0 && exact.signum() != 0);
    }
    return node.valueStream().anyMatch(Cases::isDelicate);
  }

  private void parameters(Base base, List<Way> ways) {
    for (Api.Parameter parameter : base.operation().parameters()) {
      List<Case> all = new ArrayList<>();
      switch (parameter.in()) {
        case "path" -> {
          for (String name : STRANGE_NAMES) {
            String label = "{" + parameter.name() + "} = " + name;
            Base other = base.withPath(parameter.name(), name);
            add(all, base, label, other.call(), Expected.UNKNOWN);
          }
        }
        case "query" -> query(base, parameter, all);
        case "header" -> header(base, parameter, all);
        default -> throw new IllegalArgumentException("parameter in " + parameter.in());
      }
      all.forEach(one -> ways.add(new Way("?" + parameter.name(), () -> one)));
    }
    for (String name : List.of("no_such_parameter", "", "🥁", "a.b.c", "x".repeat(300), "[]")) {
      List<Case> all = new ArrayList<>();
      Base more = base.withQuery(name, List.of("1"));
      add(all, base, "unknown parameter " + name, more.call(), Expected.REFUSED);
      all.forEach(one -> ways.add(new Way("?", () -> one)));
    }
  }

  private void query(Base base, Api.Parameter parameter, List<Case> all) {
    for (JsonNode value : values.hostile(parameter.schema())) {
      List<String> texts = value.isNull() ? null : Base.texts(value);
      if (texts != null && (texts.isEmpty() || length(texts) > LONGEST_IN_AN_ADDRESS)) {
        continue;
      }
      if (texts != null && !texts.stream().allMatch(Cases::canBeSent)) {
        continue;
      }
      boolean missing = texts == null && parameter.required();
      Expected expected =
          missing
              ? Expected.REFUSED
              : texts == null ? Expected.UNDERSTOOD : expectation(parameter, texts);
      if (expected == Expected.UNDERSTOOD && parameter.name().contains(".")) {
        // a member of a record that may want others beside it
        expected = Expected.TAKEN_OR_REFUSED;
      }
      String label = parameter.name() + " = " + (texts == null ? "left out" : texts);
      add(all, base, label, base.withQuery(parameter.name(), texts).call(), expected);
    }
  }

  private void header(Base base, Api.Parameter parameter, List<Case> all) {
    Api.Operation operation = base.operation();
    String name = parameter.name();
    List<String> values =
        Arrays.asList(null, "x", "\"x\"", "W/\"x\"", "*", "x".repeat(1_000), ",", "\"");
    for (String value : values) {
      Expected expected = ofHeader(name, value);
      Call call = ready.withItsHeaders(operation, base.withHeader(name, value).call(), expected);
      String label = base.name() + ": " + name + (value == null ? " left out" : " = " + value);
      all.add(new Case(operation, label, call, expected));
    }
  }

  /** What the fields of a change mean is told by RFC 9110, 13.1, of others in words alone. */
  private static Expected ofHeader(String name, String value) {
    boolean any = "*".equals(value);
    return switch (name) {
      case "If-Match" ->
          value == null
              ? Expected.UNCONDITIONAL
              : any
                  ? Expected.ANSWERED
                  : value.matches("(W/)?\"x\"") ? Expected.STALE : Expected.REFUSED;
      // what every test is made upon is there
      case "If-None-Match" ->
          value == null ? Expected.UNCONDITIONAL : any ? Expected.STALE : Expected.REFUSED;
      default -> Expected.TAKEN_OR_REFUSED;
    };
  }

  private static boolean canBeSent(String text) {
    return StandardCharsets.UTF_8.newEncoder().canEncode(text);
  }

  private static int length(List<String> texts) {
    return texts.stream().mapToInt(text -> text.length() + 20).sum();
  }

  /** What texts of a query mean depends on the schema alone. */
  private Expected expectation(Api.Parameter parameter, List<String> texts) {
    JsonNode schema = api.resolve(parameter.schema());
    if (texts.stream().anyMatch(text -> text.indexOf('\0') >= 0)) {
      return Expected.REFUSED;
    }
    if (OPAQUE.contains(parameter.name()) || isWholeInOtherWords(schema, texts)) {
      return Expected.TAKEN_OR_REFUSED;
    }
    if (values.isOf(schema, "array")) {
      ArrayNode list = NODES.arrayNode();
      texts.forEach(text -> list.add(typed(text, schema.path("items"))));
      return expectation(parameter.schema(), list);
    }
    return texts.size() > 1
        ? Expected.REFUSED
        : expectation(parameter.schema(), typed(texts.get(0), schema));
  }

  /** 3.0 is an integer to a schema; a reader of parameters need not think so. */
  private boolean isWholeInOtherWords(JsonNode schema, List<String> texts) {
    return values.isOf(schema, "integer")
        && texts.stream().anyMatch(text -> text.matches("-?\\d+(\\.0+|(\\.\\d+)?[eE][+-]?\\d+)"));
  }

  private JsonNode typed(String text, JsonNode schema) {
    boolean number = values.isOf(schema, "number") || values.isOf(schema, "integer");
    if (number && text.matches("-?(0|[1-9]\\d*)(\\.\\d+)?([eE][+-]?\\d{1,7})?")) {
      return NODES.numberNode(new BigDecimal(text));
    }
    if (values.isOf(schema, "boolean") && text.matches("true|false")) {
      return NODES.booleanNode(Boolean.parseBoolean(text));
    }
    return NODES.textNode(text);
  }

  private void add(List<Case> all, Base base, String label, Call call, Expected expected) {
    Api.Operation operation = base.operation();
    Call whole = ready.whole(operation, call, expected);
    all.add(new Case(operation, base.name() + ": " + label, whole, expected));
  }
}
