package org.standoff.chain;

/** How a wanted gain sits in the range of the preamp. */
public enum GainVerdict {
  /** Inside the range. */
  WITHIN("within"),
  /** The preamp can't be turned down that far: a pad is needed. */
  BELOW_RANGE("below-range"),
  /** The preamp can't be turned up that far: the peak stays under the target. */
  ABOVE_RANGE("above-range"),
  /** Told in the question, not chosen. */
  GIVEN("given");

  private final String id;

  GainVerdict(String id) {
    this.id = id;
  }

  /** The word used in answers. */
  public String id() {
    return id;
  }
}
