package org.standoff.kit.stock;

import java.util.List;

/** A kit that can't be published; it carries what is wrong, up to a bounded number of faults. */
public final class FaultyKit extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient List<KitFault> faults;

  public FaultyKit(List<KitFault> faults) {
    super("The kit has " + faults.size() + " faults.");
    this.faults = List.copyOf(faults);
  }

  public List<KitFault> faults() {
    return faults;
  }
}
