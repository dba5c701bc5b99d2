package org.standoff.chain;

/**
 * Headroom of each stage, in dB: how far its limit stands over the peak; negative where it clips.
 *
 * @param electronicsDb of the microphone's capsule and electronics
 * @param preampInputDb of the preamp's input stage
 * @param preampOutputDb of the preamp's output
 * @param converterDb of the converter, over the peak
 */
public record Headrooms(
    double electronicsDb, double preampInputDb, double preampOutputDb, double converterDb) {

  /** Headroom of one stage, in dB. */
  public double of(Stage stage) {
    return switch (stage) {
      case ELECTRONICS -> electronicsDb;
      case PREAMP_INPUT -> preampInputDb;
      case PREAMP_OUTPUT -> preampOutputDb;
      case CONVERTER -> converterDb;
    };
  }

  /** The stage that clips first: the least headroom; of equals the earlier in the signal's way. */
  public Stage first() {
    Stage first = Stage.ELECTRONICS;
    for (Stage stage : Stage.values()) {
      if (of(stage) < of(first)) {
        first = stage;
      }
    }
    return first;
  }

  /** The least of the four, in dB. */
  public double leastDb() {
    return Math.min(Math.min(electronicsDb, preampInputDb), Math.min(preampOutputDb, converterDb));
  }

  /** Stage by stage the lesser of two. */
  public Headrooms least(Headrooms other) {
    return new Headrooms(
        Math.min(electronicsDb, other.electronicsDb),
        Math.min(preampInputDb, other.preampInputDb),
        Math.min(preampOutputDb, other.preampOutputDb),
        Math.min(converterDb, other.converterDb));
  }
}
