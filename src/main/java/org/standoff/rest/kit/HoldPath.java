package org.standoff.rest.kit;

import jakarta.ws.rs.NotFoundException;
import java.util.Optional;
import java.util.UUID;
import org.standoff.rest.http.PageRequest;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;

/** Ids of holds in addresses. */
final class HoldPath {

  private HoldPath() {}

  /**
   * The id; what is none is the id of no hold.
   *
   * @throws NotFoundException where it is none
   */
  static UUID id(String text) {
    return parse(text).orElseThrow(NotFoundException::new);
  }

  /** The id in a page token, which somebody may have written themselves. */
  static UUID ofPage(String text) {
    return parse(text)
        .orElseThrow(
            () ->
                new InvalidRequest(
                    Fault.ofParameter(
                        PageRequest.TOKEN, FaultCode.WRONG_FORM, "This token is not ours.")));
  }

  /** In lower case and of full length alone, so that a hold has one address. */
  private static Optional<UUID> parse(String text) {
    try {
      return Optional.of(UUID.fromString(text)).filter(id -> id.toString().equals(text));
    } catch (IllegalArgumentException none) {
      return Optional.empty();
    }
  }
}
