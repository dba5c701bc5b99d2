package org.standoff.contract.generated;

import java.util.Map;
import java.util.Optional;

/** Whose things are reached for, and by which bearer tokens. */
interface Credentials {

  /** Where nothing is guarded. */
  Credentials NONE = new Credentials() {};

  /** One that may do it. */
  default Optional<String> good(Api.Operation operation) {
    return Optional.empty();
  }

  /** One of the same person, out of date. */
  default Optional<String> expired(Api.Operation operation) {
    return Optional.empty();
  }

  /** One of the same role in another house. */
  default Optional<String> foreign(Api.Operation operation) {
    return Optional.empty();
  }

  /** What stands in place of names of the examples, so that nobody else's things are touched. */
  default Map<String, String> names() {
    return Map.of();
  }

  /**
   * The call upon things that are there for it alone, in the state in which it can succeed; as it
   * is where others don't take that state away.
   */
  default Call uponItsOwn(Api.Operation operation, Call call) {
    return call;
  }

  /** The call as somebody who may make it sends it. */
  default Call sign(Api.Operation operation, Call call) {
    if (!operation.isGuarded()) {
      return call;
    }
    return good(operation).map(token -> with(token, call)).orElse(call);
  }

  static Call with(String token, Call call) {
    return call.with("Authorization", "Bearer " + token);
  }
}
