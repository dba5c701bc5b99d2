package org.standoff.rest.http;

import jakarta.enterprise.context.RequestScoped;

/** Whether the answer to this request may be kept by anybody, even to be asked about again. */
@RequestScoped
public class Keeping {
  private boolean forbidden;

  /** The answer holds for this moment alone. */
  public void forbid() {
    forbidden = true;
  }

  boolean isForbidden() {
    return forbidden;
  }
}
