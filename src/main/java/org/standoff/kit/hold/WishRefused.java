package org.standoff.kit.hold;

import java.util.List;

/** A wish that can't be met whatever is free: all its faults. */
public final class WishRefused extends HoldRefused {

  private static final long serialVersionUID = 1L;

  private final transient List<WishFault> faults;

  WishRefused(List<WishFault> faults) {
    super(faults.get(0).detail());
    this.faults = List.copyOf(faults);
  }

  public List<WishFault> faults() {
    return faults;
  }
}
