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

  /**
   * What stands in an address in place of the example, so that nobody else's things are touched.
   */
  default Optional<String> pathValue(Api.Operation operation, String parameter) {
    return Optional.empty();
  }

  /** What stands in bodies and queries in place of names of the examples. */
  default Map<String, String> names() {
    return Map.of();
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
