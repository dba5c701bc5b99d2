package org.standoff.answers.kit;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.standoff.answers.References;
import org.standoff.kit.Period;
import org.standoff.kit.free.AtTheDoor;
import org.standoff.kit.free.FreeKit;
import org.standoff.kit.hold.Expiry;
import org.standoff.kit.house.HouseTerms;

/** Finds which of the microphones that a calculation may choose from are free. */
@ApplicationScoped
public class FreeMicrophones {
  private final AskedHouses askedHouses;
  private final FreeKit freeKit;
  private final Expiry expiry;

  FreeMicrophones(AskedHouses askedHouses, FreeKit freeKit, Expiry expiry) {
    this.askedHouses = askedHouses;
    this.freeKit = freeKit;
    this.expiry = expiry;
  }

  /**
   * What of the models is free in the houses that can hand out and take back at the ends of the
   * period; empty, and a fault, where the question can't be asked.
   *
   * @param pointer where {@code asked} stands in the question
   * @throws org.standoff.kit.DatabaseLost where the database is not there
   */
  public Optional<FreeUnits> find(
      References references, AvailableIn asked, Collection<String> models, String pointer) {
    Optional<Period> period = AskedPeriods.resolve(references, asked.from(), asked.to(), pointer);
    List<HouseTerms> houses = askedHouses.resolve(references, asked.houses(), pointer + "/houses");
    return period.map(
        found -> {
          expiry.settleUnlessBusy();
          return new FreeUnits(freeKit.stock(Optional.of(models), found, lending(houses, found)));
        });
  }

  private static List<HouseTerms> lending(List<HouseTerms> houses, Period period) {
    return houses.stream().filter(house -> AtTheDoor.of(house, period).possible()).toList();
  }
}
