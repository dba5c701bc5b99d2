package org.standoff.kit.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.time.Instant;
import java.util.Map;
import java.util.UUID;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.standoff.kit.Caller;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.Houses;

/** Tells what holds cost. */
@ApplicationScoped
public class HoldCharges {

  private final Holds holds;
  private final Houses houses;
  private final Attempts attempts;

  HoldCharges(Holds holds, Houses houses, Attempts attempts) {
    this.holds = holds;
    this.houses = houses;
    this.attempts = attempts;
  }

  /**
   * What a hold costs, as much of it as the caller may see.
   *
   * @throws HoldUnknown where that is nothing
   */
  public HoldCharge of(Caller caller, UUID id) {
    // the clock first: what is back by then is not told as missing
    Instant now = attempts.run(KitClock::now);
    Hold hold = holds.find(caller, id);
    Map<String, HouseTerms> terms =
        houses.named(hold.lines().stream().map(line -> line.wanted().house()).toList()).stream()
            .collect(Collectors.toMap(HouseTerms::id, Function.identity()));
    return HoldCharge.of(hold, terms, now);
  }
}
