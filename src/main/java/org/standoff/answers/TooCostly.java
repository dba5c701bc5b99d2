package org.standoff.answers;

/** A calculation that is not begun, because it would take more CPU time than a request may. */
public final class TooCostly extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient CpuCost cost;

  TooCostly(CpuCost cost) {
    super(
        "This would take about %d ms of CPU time, and %d of %d ms are left to the request."
            .formatted(cost.estimatedCpuMs(), cost.leftCpuMs(), cost.mostCpuMs()));
    this.cost = cost;
  }

  public CpuCost cost() {
    return cost;
  }
}
