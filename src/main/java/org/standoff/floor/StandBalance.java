package org.standoff.floor;

/**
 * A microphone on a boom above people: moments about the edge of the stand's foot, at rest. No
 * margin for wind, a pulled cable or a knock: double the mass, put a sandbag on the foot that
 * points away from the load and the boom over a leg. A plan that puts a microphone above players
 * carries that caution.
 *
 * @param microphoneKg at the boom's end
 * @param boomLengthM from the column to the microphone
 * @param boomKg mass of the boom, centre at half its length
 * @param standKg mass of the stand, on the column
 * @param footEdgeM from the column to the edge of the foot under the load
 * @param counterArmM from the column back to the counterweight
 */
public record StandBalance(
    double microphoneKg,
    double boomLengthM,
    double boomKg,
    double standKg,
    double footEdgeM,
    double counterArmM) {
  public StandBalance {
    if (!(microphoneKg >= 0 && boomLengthM >= 0 && boomKg >= 0 && standKg >= 0)
        || !(footEdgeM > 0 && counterArmM > 0)) {
      throw new IllegalArgumentException(
          "masses and the boom are 0 or more, the foot and the counterweight's arm above 0");
    }
  }

  /**
   * Counterweight that holds the balance in kg, (m_mic (x − f) + m_boom (x/2 − f) − m_stand f)/(arm
   * + f); negative when the stand is stable without (derived).
   */
  public double counterMassKg() {
    double tipping =
        microphoneKg * (boomLengthM - footEdgeM) + boomKg * (boomLengthM / 2 - footEdgeM);
    return (tipping - standKg * footEdgeM) / (counterArmM + footEdgeM);
  }
}
