package org.standoff.contract.generated;

import com.fasterxml.jackson.databind.JsonNode;
import java.net.URI;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;

/**
 * What comes of one thing over several requests: refused, made, read, reached for by strangers,
 * changed, taken away.
 */
final class Lives {
  private static final int REFUSALS = 12;

  private final Api api;
  private final Values values;
  private final Spoiling spoiling;
  private final Credentials credentials;
  private final Ready ready;
  private final Random random;
  private final Run run;

  Lives(Api api, Credentials credentials, long seed, Run run) {
    this.api = api;
    this.values = new Values(api);
    this.spoiling = new Spoiling(api);
    this.credentials = credentials;
    this.ready = new Ready(credentials);
    this.random = new Random(seed);
    this.run = run;
  }

  /** Puts the things of the examples where they are looked for; outer ones first. */
  void begin() {
    List<Api.Operation> puts =
        api.operations().stream()
            .filter(operation -> operation.isGuarded() && operation.method().equals("PUT"))
            .sorted(Comparator.comparing(operation -> operation.path().length()))
            .toList();
    for (Api.Operation put : puts) {
      Call call = Base.of(put, values, credentials).get(0).call();
      one(put, "made to begin with", call.with("If-None-Match", "*"), Expected.THERE_AFTERWARDS);
    }
  }

  /** Takes away what can be. */
  void end() {
    api.operations().stream()
        .filter(operation -> operation.isGuarded() && operation.method().equals("DELETE"))
        .forEach(
            operation ->
                one(
                    operation,
                    "taken away at the end",
                    Base.of(operation, values, credentials).get(0).call().with("If-Match", "*"),
                    Expected.ANSWERED));
  }

  /**
   * Of everything that is put at an address of its own, put as a whole, made by POST to a list, or
   * changed in steps by POST below its address.
   */
  void all() {
    for (Api.Operation operation : api.operations()) {
      if (!operation.isGuarded()) {
        continue;
      }
      String path = operation.path();
      Optional<Api.Operation> get = api.operation(path, "GET");
      String above = path.substring(0, path.lastIndexOf('/'));
      if (operation.method().equals("PUT")) {
        boolean one = path.endsWith("}");
        get.ifPresent(
            read -> {
              if (one) {
                putAway(operation, read);
              } else {
                replaced(operation, read);
              }
            });
      } else if (operation.method().equals("POST") && get.isPresent()) {
        added(operation, get.get());
      } else if (operation.method().equals("POST")) {
        api.operation(above, "GET").ifPresent(read -> replaced(operation, read));
      }
    }
  }

  private void putAway(Api.Operation put, Api.Operation get) {
    List<Api.Parameter> path = put.parameters("path");
    if (path.isEmpty()) {
      return;
    }
    String parameter = path.get(path.size() - 1).name();
    Base example = Base.of(put, values, credentials).get(0);
    String old = example.path().get(parameter);
    String name = old.replaceFirst("[^A-Za-z0-9]*$", "") + "-g" + random.nextInt(1_000_000);
    Base fresh =
        example.withPath(parameter, name).withBody(Base.renamed(example.body(), Map.of(old, name)));
    Call reading = at(fresh, get).call();

    for (Call refused : refusals(fresh)) {
      one(put, "made badly", refused.with("If-None-Match", "*"), Expected.REFUSED);
      one(get, "after a refusal", reading, Expected.NOT_MADE);
    }
    Call making = fresh.call().with("If-None-Match", "*");
    Expected asNew = put.tellsWhatIsNew() ? Expected.CREATED : Expected.ANSWERED;
    Reply made = one(put, "made", making, asNew);
    if (!made.isGood()) {
      return;
    }
    Reply read = one(get, "made", reading, Expected.ANSWERED);
    String tag = read.header("ETag").orElse("*");
    takenBack(put, fresh, read, tag);
    one(put, "made twice", making, Expected.NOT_DONE);
    for (Call refused : refusals(fresh)) {
      one(put, "changed badly", refused.with("If-Match", tag), Expected.REFUSED);
    }
    strangers(put, fresh.call().with("If-Match", tag));
    Optional<Api.Operation> delete = api.operation(put.path(), "DELETE");
    delete.ifPresent(
        operation -> strangers(operation, at(fresh, operation).call().with("If-Match", tag)));
    Reply still = one(get, "after strangers", reading, Expected.ANSWERED);
    if (!still.header("ETag").orElse("*").equals(tag)) {
      run.keep(finding(Finding.Kind.LEFT_BEHIND, get, "refused changes changed it", reading));
    }
    delete.ifPresent(operation -> takenAway(operation, get, fresh, tag));
  }

  /** Where some members are read-only, what was read is put back as it is, and changes nothing. */
  private void takenBack(Api.Operation put, Base thing, Reply read, String tag) {
    JsonNode schema = put.bodies().get(thing.mediaType()).path("schema");
    if (api.tellsReadOnly(schema, tree(read))) {
      Call call = thing.withBody(tree(read)).call().with("If-Match", tag);
      one(put, "put back as it was read", call, Expected.ANSWERED);
    }
  }

  private void takenAway(Api.Operation delete, Api.Operation get, Base thing, String tag) {
    Call call = at(thing, delete).call().with("If-Match", tag);
    Reply last = one(delete, "taken away", call, Expected.ANSWERED);
    Call reading = at(thing, get).call();
    if (last.body().length == 0) {
      one(get, "after it was taken away", reading, Expected.GONE);
    } else {
      // what stays on record stays as the DELETE told it
      Reply kept = one(get, "after it was taken away", reading, Expected.GONE_OR_ON_RECORD);
      if (kept.isGood() && !tree(kept).equals(tree(last))) {
        run.keep(finding(Finding.Kind.STILL_THERE, get, "not as the DELETE told it", reading));
      }
    }
    one(delete, "taken away twice", call, Expected.NOT_DONE);
  }

  /** What stands is changed neither by refused requests nor by strangers. */
  private void replaced(Api.Operation change, Api.Operation get) {
    Base example = Base.of(change, values, credentials).get(0);
    Call reading = at(example, get).call();
    Reply before = one(get, "before", reading, Expected.ANSWERED);
    for (Call refused : refusals(example)) {
      one(change, "changed badly", refused.with("If-Match", "*"), Expected.REFUSED);
    }
    strangers(change, example.call().with("If-Match", "*"));
    Reply after = one(get, "after refusals", reading, Expected.ANSWERED);
    if (!tree(before).equals(tree(after))) {
      run.keep(finding(Finding.Kind.LEFT_BEHIND, get, "refused changes changed it", reading));
    }
  }

  private void added(Api.Operation post, Api.Operation list) {
    Base example = Base.of(post, values, credentials).get(0);
    Call reading = at(example, list).withQueryAsIn(example.body()).call();
    Reply before = one(list, "before", reading, Expected.ANSWERED);
    for (Call refused : refusals(example)) {
      one(post, "made badly", refused, Expected.REFUSED);
    }
    Reply after = one(list, "after refusals", reading, Expected.ANSWERED);
    if (!tree(before).equals(tree(after))) {
      run.keep(finding(Finding.Kind.LEFT_BEHIND, list, "refused requests made something", reading));
    }
    strangers(post, example.call());
    strangers(list, reading);
    Reply made = one(post, "made", example.call(), Expected.CREATED);
    made.header("Location").ifPresent(this::madeAt);
  }

  /** Who may not see a thing is told that it isn't there, or that it is not theirs. */
  private void madeAt(String location) {
    String address = URI.create(location).getRawPath();
    Api.Operation get = api.operationAt(address, "GET").orElseThrow();
    Call reading = Call.get(address);
    one(get, "at its own address", reading, Expected.ANSWERED);
    if (get.isGuarded()) {
      strangers(get, reading);
    }
  }

  private void strangers(Api.Operation operation, Call call) {
    one(operation, "unknown", call.without("Authorization"), Expected.UNAUTHORIZED);
    credentials
        .foreign(operation)
        .ifPresent(
            token ->
                one(
                    operation,
                    "of another house",
                    Credentials.with(token, call),
                    Expected.KEPT_FROM_OTHERS));
  }

  private List<Call> refusals(Base base) {
    if (base.body() == null) {
      return List.of();
    }
    JsonNode schema = base.operation().bodies().get(base.mediaType()).path("schema");
    List<Spoiling.Spoilt> ways = new ArrayList<>(spoiling.waysToSpoil(schema, base.body()));
    Collections.shuffle(ways, random);
    return ways.stream()
        .map(way -> way.applyTo(base.body()))
        .filter(Objects::nonNull)
        .filter(body -> !Cases.isDelicate(body))
        .filter(body -> !api.faultsAsRead(schema, body).isEmpty())
        .limit(REFUSALS)
        .map(body -> base.withBody(body).call())
        .toList();
  }

  private Reply one(Api.Operation operation, String label, Call call, Expected expected) {
    boolean stranger = expected == Expected.UNAUTHORIZED || expected == Expected.KEPT_FROM_OTHERS;
    Call sent = stranger ? call : ready.uponWhatItNames(operation, call);
    return run.sendAlone(new Case(operation, label, sent, expected));
  }

  /** The same address by another method, without a body. */
  private Base at(Base thing, Api.Operation operation) {
    Base other = Base.of(operation, values, credentials).get(0);
    for (var parameter : thing.path().entrySet()) {
      if (other.path().containsKey(parameter.getKey())) {
        other = other.withPath(parameter.getKey(), parameter.getValue());
      }
    }
    return other;
  }

  private static JsonNode tree(Reply reply) {
    return Judge.tree(reply.text());
  }

  private Finding finding(Finding.Kind kind, Api.Operation where, String seen, Call call) {
    return new Finding(kind, where.id(), "over several requests", seen, run.curl(call));
  }
}
