package org.standoff.answers.kit;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.TreeMap;
import org.standoff.kit.Period;
import org.standoff.kit.free.AtTheDoor;
import org.standoff.kit.free.FreeReport;
import org.standoff.kit.free.Split;
import org.standoff.kit.free.WantedLine;
import org.standoff.kit.house.Charge;
import org.standoff.kit.house.HouseTerms;

/** Tells what was found in the words of an {@link AvailabilityAnswer}. */
final class AvailabilityViews {
  private final List<WantedLine> lines;
  private final Period period;

  AvailabilityViews(List<WantedLine> lines, Period period) {
    this.lines = lines;
    this.period = period;
  }

  AvailabilityAnswer.HouseAsked house(HouseTerms house) {
    AtTheDoor door = AtTheDoor.of(house, period);
    return new AvailabilityAnswer.HouseAsked(
        house.id(),
        house.title(),
        house.zone().getId(),
        house.currency().getCurrencyCode(),
        Charge.days(house, period),
        house.minimumChargeMinor(),
        house.turnRound().toMinutes(),
        door.possible(),
        door.collectionOpen(),
        at(door.collectionFrom(), house),
        door.returned(),
        at(door.checkedInAt(), house));
  }

  AvailabilityAnswer.LineFound line(int line, List<AvailabilityAnswer.LineAtHouse> houses) {
    WantedLine wanted = lines.get(line);
    return new AvailabilityAnswer.LineFound(
        line + 1, wanted.microphone(), wanted.quantity(), wanted.matched(), houses);
  }

  AvailabilityAnswer.LineAtHouse atHouse(FreeReport.LineAtHouse one, List<Substitute> substitutes) {
    boolean onlyByChanging =
        !one.enough() && one.shelf().unitCount() > 0 && one.shortPeriods().isEmpty();
    return new AvailabilityAnswer.LineAtHouse(
        one.house().id(),
        one.enough(),
        one.shelf().freeCount(),
        one.shelf().groupCount(),
        one.shelf().unitCount(),
        one.shelf().inRepairCount(),
        one.shelf().overdueCount(),
        one.shortPeriods().stream().map(part -> stretch(part, one.house())).toList(),
        onlyByChanging,
        one.nextFree().map(next -> stretch(next, one.house())),
        substitutes);
  }

  AvailabilityAnswer.WayToGetIt way(Split split) {
    TreeMap<String, Long> totals = new TreeMap<>();
    split
        .charges()
        .forEach(charge -> totals.merge(charge.currency(), charge.chargeMinor(), Long::sum));
    return new AvailabilityAnswer.WayToGetIt(
        split.charges().size(),
        split.parts().stream()
            .map(
                part ->
                    new AvailabilityAnswer.Part(
                        part.line() + 1,
                        part.house(),
                        lines.get(part.line()).microphone(),
                        part.quantity(),
                        part.dayRateMinor(),
                        part.chargeMinor()))
            .toList(),
        split.charges(),
        totals.entrySet().stream()
            .map(total -> new AvailabilityAnswer.Total(total.getKey(), total.getValue()))
            .toList(),
        split.unmet().stream()
            .map(
                unmet ->
                    new AvailabilityAnswer.Unmet(
                        unmet.line() + 1,
                        lines.get(unmet.line()).microphone(),
                        unmet.missingCount()))
            .toList(),
        split.exact());
  }

  private static AvailabilityAnswer.Stretch stretch(Period period, HouseTerms house) {
    return new AvailabilityAnswer.Stretch(at(period.from(), house), at(period.to(), house));
  }

  private static OffsetDateTime at(Instant moment, HouseTerms house) {
    return moment.atZone(house.zone()).toOffsetDateTime();
  }
}
