package org.standoff.rest.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.JsonMappingException;

/** A member that only the service sets says something else than the address. */
final class OtherThanAddressed extends JsonMappingException {

  private static final long serialVersionUID = 1L;

  private final String addressed;

  OtherThanAddressed(JsonParser in, Class<?> request, String name, String addressed) {
    super(in, "This is not what the address tells.");
    this.addressed = addressed;
    prependPath(request, name);
  }

  /** What the address tells. */
  String addressed() {
    return addressed;
  }
}
