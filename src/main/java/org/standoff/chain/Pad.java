package org.standoff.chain;

/**
 * A fixed attenuation in the microphone.
 *
 * @param padDb attenuation, in dB, 0 when out
 * @param position ahead of the electronics or behind them
 */
public record Pad(double padDb, PadPosition position) {
  /** No pad switched in. */
  public static final Pad OUT = new Pad(0, PadPosition.AFTER_ELECTRONICS);

  /** What the pad takes off ahead of the electronics, in dB. */
  public double beforeElectronicsDb() {
    return position == PadPosition.BEFORE_ELECTRONICS ? padDb : 0;
  }
}
