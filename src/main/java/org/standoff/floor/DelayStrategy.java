package org.standoff.floor;

/** What can be done about arrivals; offered side by side, none of them picked. */
public enum DelayStrategy {
  /** Leave every arrival as it is: close first, far later, as a listener hears it. */
  NONE("none"),
  /** Delay what comes before the pair until it comes with it. */
  TO_PAIR("to-pair"),
  /** Delay it a little longer, so that the pair leads and keeps the image (precedence effect). */
  TO_PAIR_PLUS("to-pair-plus");

  private final String id;

  DelayStrategy(String id) {
    this.id = id;
  }

  /** The word used in answers. */
  public String id() {
    return id;
  }

  /** How long to hold back what arrives at {@code arrivalMs} and isn't of the pair; ≥ 0. */
  double delayMs(double arrivalMs, double pairMs, double extraMs) {
    double untilPairMs = Math.max(pairMs - arrivalMs, 0);
    return switch (this) {
      case NONE -> 0;
      case TO_PAIR -> untilPairMs;
      case TO_PAIR_PLUS -> untilPairMs > 0 ? untilPairMs + extraMs : 0;
    };
  }
}
