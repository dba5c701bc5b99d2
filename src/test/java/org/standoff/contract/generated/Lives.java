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
  private final Random random;
  private final Run run;

  Lives(Api api, Credentials credentials, long seed, Run run) {
    this.api = api;
    this.values = new Values(api);
    this.spoiling = new Spoiling(api);
    this.credentials = credentials;
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
      one(put, "made to begin with", call.with("If-None-Match", "*"), Expected.SURVIVED);
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
                    Expected.SURVIVED));
  }

  /** Of everything that is put at an address of its own, or made by POST to a list. */
  void all() {
    for (Api.Operation operation : api.operations()) {
      boolean made = operation.isGuarded() && !operation.bodies().isEmpty();
      Optional<Api.Operation> get = api.operation(operation.path(), "GET");
      if (made
          && get.isPresent()
          && operation.method().equals("PUT")
          && operation.path().endsWith("}")) {
        putAway(operation, get.get());
      } else if (made && get.isPresent() && operation.method().equals("POST")) {
        added(operation, get.get());
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
    Reply made = one(put, "made", making, Expected.DONE);
    if (!made.isGood()) {
      return;
    }
    String tag = one(get, "made", reading, Expected.ANSWERED).header("ETag").orElse("*");
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

  private void takenAway(Api.Operation delete, Api.Operation get, Base thing, String tag) {
    Call call = at(thing, delete).call().with("If-Match", tag);
    Reply last = one(delete, "taken away", call, Expected.DONE);
    Call reading = at(thing, get).call();
    if (last.body().length == 0) {
      one(get, "after it was taken away", reading, Expected.GONE);
    } else {
      // what stays on record stays as the DELETE told it
      Reply kept = one(get, "after it was taken away", reading, Expected.SURVIVED);
      if (kept.isGood() && !tree(kept).equals(tree(last))) {
        run.keep(finding(Finding.Kind.STILL_THERE, get, "not as the DELETE told it", reading));
      }
    }
    one(delete, "taken away twice", call, Expected.NOT_DONE);
  }

  private void added(Api.Operation post, Api.Operation list) {
    Base example = Base.of(post, values, credentials).get(0);
    Call reading = at(example, list).call();
    Reply before = one(list, "before", reading, Expected.ANSWERED);
    for (Call refused : refusals(example)) {
      one(post, "made badly", refused, Expected.REFUSED);
    }
    Reply after = one(list, "after refusals", reading, Expected.ANSWERED);
    if (!tree(before).equals(tree(after))) {
      run.keep(finding(Finding.Kind.LEFT_BEHIND, list, "refused requests made something", reading));
    }
    Reply made = one(post, "made", example.call(), Expected.UNDERSTOOD);
    made.header("Location").ifPresent(address -> kept(post, list, address));
  }

  /** Who may not see a thing is told that it isn't there, or that it is not theirs. */
  private void kept(Api.Operation post, Api.Operation list, String address) {
    Call bare = Call.get(URI.create(address).getRawPath());
    Call own = credentials.sign(list, bare);
    one(list, "its own address", own, Expected.ANSWERED);
    if (list.isGuarded()) {
      one(list, "its address, unknown", bare, Expected.UNAUTHORIZED);
      credentials
          .foreign(post)
          .ifPresent(
              token ->
                  one(
                      list,
                      "its address, of another house",
                      Credentials.with(token, bare),
                      Expected.KEPT_FROM_OTHERS));
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
    JsonNode schema = base.operation().bodies().get(base.mediaType()).path("schema");
    List<Spoiling.Spoilt> ways = new ArrayList<>(spoiling.waysToSpoil(schema, base.body()));
    Collections.shuffle(ways, random);
    return ways.stream()
        .map(way -> way.applyTo(base.body()))
        .filter(Objects::nonNull)
        .filter(body -> !api.faults(schema, Cases.withoutNulls(body)).isEmpty())
        .limit(REFUSALS)
        .map(body -> base.withBody(body).call())
        .toList();
  }

  private Reply one(Api.Operation operation, String label, Call call, Expected expected) {
    boolean stranger = expected == Expected.UNAUTHORIZED || expected == Expected.KEPT_FROM_OTHERS;
    Call sent = stranger ? call : credentials.sign(operation, call);
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
