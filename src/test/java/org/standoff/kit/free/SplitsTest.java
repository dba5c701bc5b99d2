package org.standoff.kit.free;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.standoff.kit.Model;
import org.standoff.kit.Period;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.OpeningHours;

/**
 * Counted by hand with the rules of the demo's houses: from Friday to Monday Ostrel charges 3.5
 * days and Vennick 3, and Vennick at least 60.00.
 */
class SplitsTest {
  private static final Period SESSION =
      new Period(Instant.parse("2027-06-11T08:00:00Z"), Instant.parse("2027-06-14T09:00:00Z"));
  private static final HouseTerms OSTREL = house("ostrel", "EUR", "1.5", 0);
  private static final HouseTerms VENNICK = house("vennick", "EUR", "1", 6000);
  private static final HouseTerms ABROAD = house("abroad", "CHF", "2", 0);

  @Test
  void theLeastChargeOfAHouseCanMakeTheDearerRateTheCheaperWay() {
    // one ribbon 3.5 x 15.00 = 52.50 and one wide 3.5 x 11.00 = 38.50 from Ostrel: 91.00;
    // the ribbon from Vennick 3 x 13.00 = 39.00, but at least 60.00, and the wide: 98.50
    Split cheapest =
        splits(
                List.of(line("rib", 1), line("wide", 1)),
                List.of(OSTREL, VENNICK),
                shelf(OSTREL, "rib", 1500, 1),
                shelf(OSTREL, "wide", 1100, 2),
                shelf(VENNICK, "rib", 1300, 2))
            .cheapest()
            .get(0);
    assertThat(cheapest.parts())
        .containsExactly(
            new Split.Part(0, "ostrel", 1, 1500, 5250), new Split.Part(1, "ostrel", 1, 1100, 3850));
    assertThat(total(cheapest)).isEqualTo(9100);
    assertThat(cheapest.unmet()).isEmpty();
    assertThat(cheapest.exact()).isTrue();
  }

  @Test
  void theCheapestWayUsesTwoHousesWhereTheFewestUseOne() {
    // four dynamics, a ribbon, a wide: all from Ostrel 56.00 + 52.50 + 38.50 = 147.00;
    // dynamics 4 x 3 x 3.00 = 36.00 and ribbon 39.00 from Vennick make 75.00, the wide 38.50:
    // 113.50
    Splits splits =
        splits(
            List.of(line("dyn", 4), line("rib", 1), line("wide", 1)),
            List.of(OSTREL, VENNICK),
            shelf(OSTREL, "dyn", 400, 4),
            shelf(OSTREL, "rib", 1500, 1),
            shelf(OSTREL, "wide", 1100, 2),
            shelf(VENNICK, "dyn", 300, 4),
            shelf(VENNICK, "rib", 1300, 2));
    Split fewest = splits.fewestHouses();
    assertThat(fewest.charges())
        .containsExactly(new Split.HouseCharge("ostrel", "EUR", 3.5, 14_700, 0, 14_700));
    Split cheapest = splits.cheapest().get(0);
    assertThat(cheapest.charges())
        .containsExactly(
            new Split.HouseCharge("ostrel", "EUR", 3.5, 3850, 0, 3850),
            new Split.HouseCharge("vennick", "EUR", 3, 7500, 6000, 7500));
    assertThat(total(cheapest)).isEqualTo(11_350);
  }

  @Test
  void whatNoHouseHasIsToldAndTheRestIsStillFound() {
    Split split =
        splits(
                List.of(line("clip", 6), line("none", 1)),
                List.of(OSTREL, VENNICK),
                shelf(OSTREL, "clip", 800, 2),
                shelf(VENNICK, "clip", 700, 3))
            .fewestHouses();
    assertThat(split.unmet()).containsExactly(new Split.Unmet(0, 1), new Split.Unmet(1, 1));
    assertThat(split.parts())
        .containsExactly(
            new Split.Part(0, "ostrel", 2, 800, 5600), new Split.Part(0, "vennick", 3, 700, 6300));
  }

  @Test
  void aMatchedLineTakesAWholeGroupOfItsSizeFromOneHouse() {
    // a pair 2 x 12.00 x 3.5 = 84.00 is the only pair; two singles elsewhere are none
    Split split =
        splits(
                List.of(new WantedLine("omni", 2, true), line("omni", 1)),
                List.of(VENNICK, OSTREL),
                shelf(VENNICK, "omni", 1000, 2),
                pair(OSTREL, "omni", 1200))
            .cheapest()
            .get(0);
    assertThat(split.parts())
        .containsExactly(
            new Split.Part(0, "ostrel", 2, 1200, 8400),
            new Split.Part(1, "vennick", 1, 1000, 3000));
    assertThat(split.unmet()).isEmpty();
  }

  @Test
  void aGroupIsNeverBrokenForASingleUnit() {
    Split split =
        splits(List.of(line("omni", 1)), List.of(OSTREL), pair(OSTREL, "omni", 1200))
            .fewestHouses();
    assertThat(split.parts()).isEmpty();
    assertThat(split.unmet()).containsExactly(new Split.Unmet(0, 1));
  }

  @Test
  void threeUnitsOfTwoPairsAndASingleAreOnePairAndTheSingle() {
    Split split =
        splits(
                List.of(line("omni", 3)),
                List.of(OSTREL),
                new Shelf(
                    new Model("ostrel", "omni"),
                    5,
                    0,
                    0,
                    List.of(new Shelf.Loose(900, 1)),
                    List.of(
                        new Shelf.Group(List.of(1200L, 1200L), 1),
                        new Shelf.Group(List.of(1000L, 1100L), 1))))
            .cheapest()
            .get(0);
    // 9.00, 10.00 and 11.00 for 3.5 days
    assertThat(split.parts())
        .containsExactly(
            new Split.Part(0, "ostrel", 1, 900, 3150),
            new Split.Part(0, "ostrel", 1, 1000, 3500),
            new Split.Part(0, "ostrel", 1, 1100, 3850));
  }

  @Test
  void currenciesAreNeverAddedNorCompared() {
    Splits splits =
        splits(
            List.of(line("rib", 2)),
            List.of(ABROAD, OSTREL),
            shelf(ABROAD, "rib", 1, 2),
            shelf(OSTREL, "rib", 1500, 2));
    assertThat(splits.cheapest())
        .extracting(split -> split.charges().get(0).currency())
        .containsExactly("CHF", "EUR");
    // both do alone; the first that was named is taken, whatever its figures say
    assertThat(splits.fewestHouses().charges().get(0).house()).isEqualTo("abroad");
    assertThat(
            splits(
                    List.of(line("rib", 2)),
                    List.of(OSTREL, ABROAD),
                    shelf(ABROAD, "rib", 1, 2),
                    shelf(OSTREL, "rib", 1500, 2))
                .fewestHouses()
                .charges()
                .get(0)
                .house())
        .isEqualTo("ostrel");
  }

  @Test
  void fiftyModelsInTwentyHousesOfOneRateAreSplitWithoutLookingAtEveryWay() {
    List<WantedLine> lines = new ArrayList<>();
    List<HouseTerms> houses = new ArrayList<>();
    List<Shelf> shelves = new ArrayList<>();
    for (int house = 0; house < 20; house++) {
      houses.add(house("h" + house, "EUR", "1", 10_000));
    }
    for (int model = 0; model < 50; model++) {
      lines.add(line("m" + model, 50));
      for (int house = model % 3; house < 20; house += 1 + model % 4) {
        shelves.add(shelf(houses.get(house), "m" + model, 500 + (model * house) % 7, 9));
      }
    }
    Splits splits = new Splits(lines, houses, shelves, SESSION);
    for (Split split : List.of(splits.fewestHouses(), splits.cheapest().get(0))) {
      int had = split.parts().stream().mapToInt(Split.Part::quantity).sum();
      int missing = split.unmet().stream().mapToInt(Split.Unmet::missingCount).sum();
      assertThat(had + missing).isEqualTo(2500);
      assertThat(missing).isEqualTo(missing(lines, shelves));
    }
  }

  private static int missing(List<WantedLine> lines, List<Shelf> shelves) {
    return lines.stream()
        .mapToInt(
            line ->
                Math.max(
                    0,
                    line.quantity()
                        - shelves.stream()
                            .filter(shelf -> shelf.model().microphone().equals(line.microphone()))
                            .mapToInt(Shelf::freeCount)
                            .sum()))
        .sum();
  }

  private static long total(Split split) {
    return split.charges().stream().mapToLong(Split.HouseCharge::chargeMinor).sum();
  }

  private static Splits splits(List<WantedLine> lines, List<HouseTerms> houses, Shelf... shelves) {
    return new Splits(lines, houses, List.of(shelves), SESSION);
  }

  private static WantedLine line(String microphone, int quantity) {
    return new WantedLine(microphone, quantity, false);
  }

  private static Shelf shelf(HouseTerms house, String microphone, long dayRateMinor, int count) {
    return new Shelf(
        new Model(house.id(), microphone),
        count,
        0,
        0,
        List.of(new Shelf.Loose(dayRateMinor, count)),
        List.of());
  }

  private static Shelf pair(HouseTerms house, String microphone, long dayRateMinor) {
    return new Shelf(
        new Model(house.id(), microphone),
        2,
        0,
        0,
        List.of(),
        List.of(new Shelf.Group(List.of(dayRateMinor, dayRateMinor), 1)));
  }

  private static HouseTerms house(
      String id, String currency, String weekendDays, long minimumChargeMinor) {
    return new HouseTerms(
        id,
        id,
        ZoneId.of("Europe/Vienna"),
        Currency.getInstance(currency),
        OpeningHours.ALWAYS,
        Duration.ofHours(4),
        false,
        new BigDecimal(weekendDays),
        minimumChargeMinor,
        1);
  }
}
