package org.standoff.pairs.fit;

import java.util.Arrays;
import java.util.List;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Polar;
import org.standoff.chain.Microphone;
import org.standoff.chain.MicrophoneOutput;

/**
 * Microphones of one model that may be used.
 *
 * @param microphoneId their model
 * @param patterns of the main output, or of the mid output of a mid-side body
 * @param midSideBody true when one body gives mid and side
 * @param count how many there are, at least 1
 * @param matched true when they are a matched group
 * @param rejectionCapDb deepest rejection that is believed
 */
public record AtHand(
    String microphoneId,
    List<PatternChoice> patterns,
    boolean midSideBody,
    int count,
    boolean matched,
    double rejectionCapDb) {
  private static final String IDEAL = "ideal";

  public AtHand {
    patterns = List.copyOf(patterns);
    if (count < 1) {
      throw new IllegalArgumentException("at hand means at least one, not " + count);
    }
  }

  public static AtHand of(Microphone microphone, int count, boolean matched) {
    MicrophoneOutput first = microphone.outputs().get(0);
    boolean body = microphone.outputs().size() > 1;
    return new AtHand(
        microphone.id(),
        first.patterns().stream()
            .map(figures -> new PatternChoice(figures.name(), figures.polar()))
            .toList(),
        body,
        count,
        matched,
        microphone.rejectionCapDb());
  }

  /** Every pattern as the bare word means it, for a question that names no microphones. */
  public static AtHand ideal() {
    return new AtHand(
        IDEAL,
        Arrays.stream(PatternName.values())
            .map(name -> new PatternChoice(name, name.ideal()))
            .toList(),
        false,
        3,
        true,
        Polar.DEFAULT_REJECTION_CAP_DB);
  }

  boolean has(PatternName name) {
    return patterns.stream().anyMatch(choice -> choice.name() == name);
  }
}
