package org.standoff.answers;

import jakarta.enterprise.context.RequestScoped;

/**
 * CPU time that one request may take, be it one question or a batch. It is taken by estimate,
 * before anything is computed, so that the same request is always answered alike.
 */
@RequestScoped
public class CpuBudget {
  /** Of one core, in ms. */
  public static final long MOST_MS = 10_000;

  private double leftMs = MOST_MS;

  /**
   * Takes the estimate of a calculation that is about to begin.
   *
   * @throws TooCostly where that is more than what is left; nothing is taken then
   */
  public void take(double estimatedMs) {
    if (estimatedMs > leftMs) {
      throw new TooCostly(
          new CpuCost((long) Math.ceil(estimatedMs), (long) Math.floor(leftMs), MOST_MS));
    }
    leftMs -= estimatedMs;
  }
}
