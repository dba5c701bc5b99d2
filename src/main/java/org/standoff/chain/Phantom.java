package org.standoff.chain;

/**
 * Phantom supply P48 (IEC 61938; the tolerance and the greatest current are from memory): 48 V
 * through 6.81 kΩ to each pin.
 */
public final class Phantom {
  /** Supply voltage, in V. */
  public static final double SUPPLY_V = 48;

  /** Tolerance of the supply, ± V. */
  public static final double TOLERANCE_V = 4;

  /** Resistor to each pin, in kΩ. */
  public static final double FEED_KOHM = 6.81;

  /** Greatest current of one microphone, in mA. */
  public static final double GREATEST_CURRENT_MA = 10;

  private Phantom() {}

  /**
   * Voltage at the pins of a microphone, in V: both feeds in parallel carry its current.
   *
   * @param currentMa in mA, 0..14; past that the result is negative, which no supply gives
   */
  public static double pinVolts(double currentMa) {
    return SUPPLY_V - currentMa * FEED_KOHM / 2;
  }

  /** Current with both pins shorted, in mA. */
  public static double shortCircuitMa() {
    return 2 * SUPPLY_V / FEED_KOHM;
  }
}
