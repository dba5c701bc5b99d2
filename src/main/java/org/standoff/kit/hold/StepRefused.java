package org.standoff.kit.hold;

/** What can't be done with a hold as it stands. */
public final class StepRefused extends HoldRefused {

  private static final long serialVersionUID = 1L;

  private final HoldState state;

  StepRefused(HoldState state, String detail) {
    super(detail);
    this.state = state;
  }

  /** How the hold stands. */
  public HoldState state() {
    return state;
  }
}
