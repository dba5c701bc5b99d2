package org.standoff.answers.settings;

import java.util.ArrayList;
import java.util.List;
import org.standoff.advice.OneInput;
import org.standoff.answers.Played;

/**
 * What one gain does to the sources that a player doubles on, one at a time, on one input.
 *
 * @param microphone the best one, whose settings serve all of them
 * @param gainDb the one gain: that of the loudest
 * @param stepDb from the loudest source's own gain to the softest one's
 * @param shares what each of them gets, in the order of the question
 */
public record DoublesOnOneInput(
    String microphone, double gainDb, double stepDb, List<Share> shares) {

  /** One of the sources at the one gain. */
  public record Share(
      String source,
      String placement,
      double ownGainDb,
      double peakDbfs,
      double guardedHeadroomDb,
      double filterLossAtLowestDb,
      double signalToNoiseDb) {}

  static DoublesOnOneInput of(String microphone, List<Played> played, OneInput oneInput) {
    List<Share> shares = new ArrayList<>();
    for (int i = 0; i < played.size(); i++) {
      OneInput.Share share = oneInput.shares().get(i);
      shares.add(
          new Share(
              played.get(i).id(),
              played.get(i).placement().id(),
              share.ownGainDb(),
              share.peakDbfs(),
              share.guardedHeadroomDb(),
              share.filterLossAtLowestDb(),
              share.signalToNoiseDb()));
    }
    return new DoublesOnOneInput(microphone, oneInput.gainDb(), oneInput.stepDb(), shares);
  }
}
