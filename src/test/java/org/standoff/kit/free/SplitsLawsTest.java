package org.standoff.kit.free;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.standoff.kit.Model;
import org.standoff.kit.Period;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.OpeningHours;

/**
 * Splits of small wishes against every way there is: each unit and group of each house handed to
 * each line, or left.
 */
class SplitsLawsTest {
  /** One whole Wednesday: a day's rate is the charge. */
  private static final Period DAY =
      new Period(Instant.parse("2027-06-09T00:00:00Z"), Instant.parse("2027-06-10T00:00:00Z"));

  @Property(seed = "801", tries = 400)
  void splitsAreAsGoodAsTheBestOfEveryWayThereIs(@ForAll Random random) {
    Small small = new Small(random);
    Splits splits = new Splits(small.lines, small.houses, small.shelves(), DAY);
    EveryWay every = new EveryWay(small);
    Split fewest = splits.fewestHouses();
    Split cheapest = splits.cheapest().get(0);

    for (Split split : List.of(fewest, cheapest)) {
      assertThat(split.exact()).isTrue();
      assertThat(missing(split)).isEqualTo(every.leastMissing);
      small.assertCanBeHandedOut(split);
    }
    assertThat(fewest.charges()).hasSize(every.fewestHouses);
    assertThat(total(fewest)).isEqualTo(every.leastMinorOfFewest);
    assertThat(total(cheapest)).isEqualTo(every.leastMinor);
    assertThat(total(cheapest)).isLessThanOrEqualTo(total(fewest));
    assertThat(cheapest.charges()).hasSizeGreaterThanOrEqualTo(fewest.charges().size());
  }

  private static int missing(Split split) {
    return split.unmet().stream().mapToInt(Split.Unmet::missingCount).sum();
  }

  private static long total(Split split) {
    return split.charges().stream().mapToLong(Split.HouseCharge::chargeMinor).sum();
  }

  /** Units that leave together. */
  private record Bundle(int house, String model, List<Long> ratesMinor, boolean group) {}

  /** Up to three lines of up to two models, and up to seven bundles in three houses. */
  private static final class Small {
    final List<WantedLine> lines = new ArrayList<>();
    final List<HouseTerms> houses = new ArrayList<>();
    final List<Bundle> bundles = new ArrayList<>();

    Small(Random random) {
      for (int i = 0; i < 3; i++) {
        houses.add(house("h" + i, random.nextInt(3) * 20L));
      }
      int wanted = 1 + random.nextInt(3);
      for (int i = 0; i < wanted; i++) {
        boolean matched = random.nextInt(3) == 0;
        lines.add(
            new WantedLine("m" + random.nextInt(2), matched ? 2 : 1 + random.nextInt(3), matched));
      }
      int there = random.nextInt(8);
      for (int i = 0; i < there; i++) {
        boolean group = random.nextInt(3) == 0;
        List<Long> rates = new ArrayList<>();
        int size = group ? 2 + random.nextInt(2) : 1;
        for (int unit = 0; unit < size; unit++) {
          rates.add(1L + random.nextInt(20));
        }
        bundles.add(new Bundle(random.nextInt(3), "m" + random.nextInt(2), rates, group));
      }
    }

    List<Shelf> shelves() {
      List<Shelf> shelves = new ArrayList<>();
      for (int house = 0; house < houses.size(); house++) {
        for (String model : List.of("m0", "m1")) {
          List<Shelf.Loose> loose = new ArrayList<>();
          List<Shelf.Group> groups = new ArrayList<>();
          List<Bundle> sorted = new ArrayList<>(bundles);
          sorted.sort(
              (one, other) -> Long.compare(one.ratesMinor().get(0), other.ratesMinor().get(0)));
          for (Bundle bundle : sorted) {
            if (bundle.house() == house && bundle.model().equals(model)) {
              if (bundle.group()) {
                groups.add(new Shelf.Group(bundle.ratesMinor(), 1));
              } else {
                loose.add(new Shelf.Loose(bundle.ratesMinor().get(0), 1));
              }
            }
          }
          shelves.add(new Shelf(new Model("h" + house, model), 9, 0, 0, loose, groups));
        }
      }
      return shelves;
    }

    /** No house hands out more of a rate than it has, and matched lines get just one group. */
    void assertCanBeHandedOut(Split split) {
      Map<String, Integer> handed = new HashMap<>();
      Map<Integer, Integer> ofLine = new HashMap<>();
      for (Split.Part part : split.parts()) {
        WantedLine line = lines.get(part.line());
        handed.merge(
            part.house() + line.microphone() + part.dayRateMinor(), part.quantity(), Integer::sum);
        ofLine.merge(part.line(), part.quantity(), Integer::sum);
        assertThat(part.chargeMinor()).isEqualTo(part.quantity() * part.dayRateMinor());
      }
      Map<String, Integer> there = new HashMap<>();
      for (Bundle bundle : bundles) {
        for (long rate : bundle.ratesMinor()) {
          there.merge("h" + bundle.house() + bundle.model() + rate, 1, Integer::sum);
        }
      }
      handed.forEach(
          (what, count) -> assertThat(count).isLessThanOrEqualTo(there.getOrDefault(what, 0)));
      Map<Integer, Integer> unmet = new HashMap<>();
      split.unmet().forEach(one -> unmet.put(one.line(), one.missingCount()));
      for (int line = 0; line < lines.size(); line++) {
        int had = ofLine.getOrDefault(line, 0);
        assertThat(had + unmet.getOrDefault(line, 0)).isEqualTo(lines.get(line).quantity());
        if (lines.get(line).matched()) {
          assertThat(had).isIn(0, lines.get(line).quantity());
        }
      }
      for (Split.HouseCharge charge : split.charges()) {
        long sum =
            split.parts().stream()
                .filter(part -> part.house().equals(charge.house()))
                .mapToLong(Split.Part::chargeMinor)
                .sum();
        assertThat(charge.sumMinor()).isEqualTo(sum);
        assertThat(charge.chargeMinor()).isEqualTo(Math.max(sum, charge.minimumMinor()));
      }
    }
  }

  /**
   * Leaves every bundle, hands it to a line that wants a group, or to the lines of its model that
   * don't. Lines that want a group come first, then units, then charges.
   */
  private static final class EveryWay {
    private final Small small;
    private final boolean[] groupHad;
    private final Map<String, Integer> unitsLeft = new HashMap<>();
    private final Map<Integer, Long> sums = new TreeMap<>();
    private int leastUnmetLines = Integer.MAX_VALUE;
    int leastMissing = Integer.MAX_VALUE;
    int fewestHouses;
    long leastMinor;
    long leastMinorOfFewest;

    EveryWay(Small small) {
      this.small = small;
      this.groupHad = new boolean[small.lines.size()];
      small.lines.stream()
          .filter(line -> !line.matched())
          .forEach(line -> unitsLeft.merge(line.microphone(), line.quantity(), Integer::sum));
      hand(0);
    }

    private void hand(int at) {
      if (at == small.bundles.size()) {
        judge();
        return;
      }
      hand(at + 1);
      Bundle bundle = small.bundles.get(at);
      int size = bundle.ratesMinor().size();
      long minor = bundle.ratesMinor().stream().mapToLong(Long::longValue).sum();
      Long before = sums.get(bundle.house());
      sums.merge(bundle.house(), minor, Long::sum);
      for (int line = 0; line < groupHad.length; line++) {
        WantedLine wanted = small.lines.get(line);
        boolean fits = wanted.matched() && bundle.group() && wanted.quantity() == size;
        if (fits && wanted.microphone().equals(bundle.model()) && !groupHad[line]) {
          groupHad[line] = true;
          hand(at + 1);
          groupHad[line] = false;
        }
      }
      int left = unitsLeft.getOrDefault(bundle.model(), 0);
      if (left >= size) {
        unitsLeft.put(bundle.model(), left - size);
        hand(at + 1);
        unitsLeft.put(bundle.model(), left);
      }
      if (before == null) {
        sums.remove(bundle.house());
      } else {
        sums.put(bundle.house(), before);
      }
    }

    private void judge() {
      int unmetLines = 0;
      int missing = unitsLeft.values().stream().mapToInt(Integer::intValue).sum();
      for (int line = 0; line < groupHad.length; line++) {
        if (small.lines.get(line).matched() && !groupHad[line]) {
          unmetLines++;
          missing += small.lines.get(line).quantity();
        }
      }
      long minor = 0;
      for (Map.Entry<Integer, Long> sum : sums.entrySet()) {
        minor += Math.max(sum.getValue(), small.houses.get(sum.getKey()).minimumChargeMinor());
      }
      boolean more =
          unmetLines < leastUnmetLines || unmetLines == leastUnmetLines && missing < leastMissing;
      boolean asMuch = unmetLines == leastUnmetLines && missing == leastMissing;
      if (more) {
        leastUnmetLines = unmetLines;
        leastMissing = missing;
      }
      if (more || asMuch) {
        leastMinor = more ? minor : Math.min(leastMinor, minor);
        if (more || sums.size() < fewestHouses) {
          leastMinorOfFewest = minor;
          fewestHouses = sums.size();
        } else if (sums.size() == fewestHouses) {
          leastMinorOfFewest = Math.min(leastMinorOfFewest, minor);
        }
      }
    }
  }

  private static HouseTerms house(String id, long minimumChargeMinor) {
    return new HouseTerms(
        id,
        id,
        ZoneOffset.UTC,
        Currency.getInstance("EUR"),
        OpeningHours.ALWAYS,
        Duration.ZERO,
        false,
        BigDecimal.valueOf(2),
        minimumChargeMinor,
        1);
  }
}
