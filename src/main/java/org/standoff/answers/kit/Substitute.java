package org.standoff.answers.kit;

import java.util.List;
import java.util.Optional;
import org.standoff.advice.Caution;
import org.standoff.chain.Exchange;
import org.standoff.chain.Powering;

/**
 * A microphone that is free and could stand in, with what is lost by it.
 *
 * @param microphone its id
 * @param title its name for people
 * @param freeCount units that are free
 * @param matched whether the units would be a matched group, as was wanted
 * @param dayRateMinor least charge for a day and a unit, in minor units of the house's currency
 * @param maximumChangeDb change of the level that it bears with the pads out
 * @param limitChangeDb change of the level that it bears with whatever pads it has
 * @param selfNoiseChangeDb change of its own noise, A-weighted
 * @param sensitivityChangeDb change of what it gives out; the gain makes up for it
 * @param lacks patterns that it does not have
 * @param poweringChange where it wants another supply
 * @param loses the same in words; empty where nothing is lost
 * @param cautions about its powering
 */
public record Substitute(
    String microphone,
    String title,
    int freeCount,
    boolean matched,
    long dayRateMinor,
    double maximumChangeDb,
    double limitChangeDb,
    double selfNoiseChangeDb,
    double sensitivityChangeDb,
    List<Exchange.Lack> lacks,
    Optional<PoweringChange> poweringChange,
    List<String> loses,
    List<Caution> cautions) {

  /** Another supply than the wanted one's. */
  public record PoweringChange(Powering.Need wanted, Powering.Need substitute) {}

  public Substitute {
    lacks = List.copyOf(lacks);
    loses = List.copyOf(loses);
    cautions = List.copyOf(cautions);
  }
}
