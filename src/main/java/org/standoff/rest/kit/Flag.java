package org.standoff.rest.kit;

import org.jspecify.annotations.Nullable;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;

/** A query parameter that is true or false. Anything else must not pass for either. */
final class Flag {

  private Flag() {}

  /** What it says; false where it is not there. */
  static boolean of(String parameter, @Nullable String text) {
    if (text == null || text.equals("false")) {
      return false;
    }
    if (text.equals("true")) {
      return true;
    }
    throw new InvalidRequest(
        Fault.ofParameter(parameter, FaultCode.WRONG_TYPE, "This is neither true nor false.")
            .found(text)
            .allowed("true, false"));
  }
}
