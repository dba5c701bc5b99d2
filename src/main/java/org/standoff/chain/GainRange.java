package org.standoff.chain;

/**
 * Range and step of a preamp's gain.
 *
 * @param leastDb least gain, in dB; it may be above 0
 * @param mostDb most gain, in dB
 * @param stepDb step of the switch, in dB, &gt; 0
 */
public record GainRange(double leastDb, double mostDb, double stepDb) {
  /** Slack for figures that are a step in decimal notation but a hair below it in binary. */
  private static final double STEP_SLACK = 1e-9;

  /**
   * The largest setting that is not above the wanted gain. Rounded down, never to the nearest: a
   * rounding up spends margin unseen. Outside the range it is the nearest end; compare with the
   * wanted gain to see that.
   *
   * @param wantedDb in dB
   */
  public double settingFor(double wantedDb) {
    if (wantedDb <= leastDb) {
      return leastDb;
    }
    double limited = Math.min(wantedDb, mostDb);
    return leastDb + Math.floor((limited - leastDb) / stepDb + STEP_SLACK) * stepDb;
  }

  /** Whether the wanted gain, in dB, lies inside the range. */
  public boolean reaches(double wantedDb) {
    return wantedDb >= leastDb && wantedDb <= mostDb;
  }
}
