package org.standoff.kit.free;

import java.time.Instant;
import java.util.Optional;
import org.standoff.kit.Period;
import org.standoff.kit.hold.Handover;
import org.standoff.kit.house.HouseTerms;

/**
 * Whether a house's door is open when kit is to leave and to come back.
 *
 * @param collectionOpen whether it is open at the beginning of the period
 * @param collectionFrom the first moment from that on at which it is
 * @param returned how the kit comes back at the end of the period
 * @param checkedInAt when it is then checked in; the first opening from the end on
 */
public record AtTheDoor(
    boolean collectionOpen, Instant collectionFrom, ReturnWay returned, Instant checkedInAt) {

  /** How kit comes back. */
  public enum ReturnWay {
    /** The house is open. */
    OVER_THE_COUNTER,
    /** The house is closed and has a drop-box. */
    DROP_BOX,
    /** The house is closed and has none: it can't come back then. */
    REFUSED
  }

  /** What holds for a period at a house. */
  public static AtTheDoor of(HouseTerms house, Period period) {
    Handover handover = new Handover(house);
    Optional<Instant> collection = handover.refusesCollection(period.from());
    Instant checkedIn = handover.opening(period.to());
    ReturnWay returned =
        handover.refusesReturn(period.to()).isPresent()
            ? ReturnWay.REFUSED
            : checkedIn.equals(period.to()) ? ReturnWay.OVER_THE_COUNTER : ReturnWay.DROP_BOX;
    return new AtTheDoor(
        collection.isEmpty(), collection.orElse(period.from()), returned, checkedIn);
  }

  /** Whether the house can lend for the period at all. */
  public boolean possible() {
    return collectionOpen && returned != ReturnWay.REFUSED;
  }
}
