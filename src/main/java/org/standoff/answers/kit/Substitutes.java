package org.standoff.answers.kit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.LongStream;
import org.standoff.advice.Cautions;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.Item;
import org.standoff.catalogue.ItemId;
import org.standoff.chain.Exchange;
import org.standoff.chain.Microphone;
import org.standoff.chain.Powering;
import org.standoff.kit.free.Shelf;
import org.standoff.kit.free.WantedLine;

/**
 * Finds what could stand in for a microphone that is not to be had: what the house has free of
 * other models, those first with which least is lost. What is lost follows from the two sheets;
 * nobody has listed which model may replace which.
 */
final class Substitutes {
  /** Less is not worth a word. */
  private static final double WORTH_TELLING_DB = 0.05;

  private final Catalogue catalogue;
  private final List<Shelf> shelves;

  /**
   * @param shelves all that the houses have
   */
  Substitutes(Catalogue catalogue, List<Shelf> shelves) {
    this.catalogue = catalogue;
    this.shelves = shelves;
  }

  private record Ranked(Shelf shelf, Microphone microphone, Exchange exchange) {}

  /** The best so many at a house; none for a line that wants no microphone of the catalogue. */
  List<Substitute> of(WantedLine wanted, String house, int limit) {
    Optional<Microphone> lost = microphone(wanted.microphone());
    if (lost.isEmpty() || limit == 0) {
      return List.of();
    }
    List<Ranked> ranked = new ArrayList<>();
    for (Shelf shelf : shelves) {
      if (shelf.model().house().equals(house)
          && !shelf.model().microphone().equals(wanted.microphone())) {
        WantedLine instead =
            new WantedLine(shelf.model().microphone(), wanted.quantity(), wanted.matched());
        microphone(shelf.model().microphone())
            .filter(other -> shelf.lots().meet(instead))
            .filter(other -> other.outputs().size() >= lost.get().outputs().size())
            .ifPresent(
                other -> ranked.add(new Ranked(shelf, other, Exchange.of(lost.get(), other))));
      }
    }
    return ranked.stream()
        .sorted(
            Comparator.comparing(Ranked::exchange, Exchange.LEAST_LOST_FIRST)
                .thenComparing(one -> one.microphone().id()))
        .limit(limit)
        .map(one -> told(one, lost.get()))
        .toList();
  }

  private Optional<Microphone> microphone(String id) {
    return ItemId.parse(id)
        .flatMap(parsed -> catalogue.find(Microphone.class, parsed))
        .map(Item::value);
  }

  private static Substitute told(Ranked one, Microphone lost) {
    Exchange exchange = one.exchange();
    Powering.Need wanted = lost.powering().need();
    Powering.Need instead = one.microphone().powering().need();
    return new Substitute(
        one.microphone().id(),
        one.microphone().title(),
        one.shelf().freeCount(),
        leastRate(one.shelf()),
        exchange.maximumChangeDb(),
        exchange.limitChangeDb(),
        exchange.selfNoiseChangeDb(),
        exchange.sensitivityChangeDb(),
        exchange.lacks(),
        wanted == instead
            ? Optional.empty()
            : Optional.of(new Substitute.PoweringChange(wanted, instead)),
        loses(exchange),
        Cautions.ofPowering(one.microphone()));
  }

  private static long leastRate(Shelf shelf) {
    return LongStream.concat(
            shelf.loose().stream().mapToLong(Shelf.Loose::dayRateMinor),
            shelf.groups().stream()
                .flatMap(group -> group.dayRatesMinor().stream())
                .mapToLong(Long::longValue))
        .min()
        .orElseThrow();
  }

  private static List<String> loses(Exchange exchange) {
    List<String> loses = new ArrayList<>();
    exchange
        .lacks()
        .forEach(
            lack ->
                loses.add(
                    String.format(
                        Locale.ROOT,
                        "no %s: %s is the nearest",
                        lack.pattern().id(),
                        lack.nearest().id())));
    if (exchange.limitChangeDb() < -WORTH_TELLING_DB) {
      loses.add(String.format(Locale.ROOT, "%.1f dB less headroom", -exchange.limitChangeDb()));
    }
    if (exchange.selfNoiseChangeDb() > WORTH_TELLING_DB) {
      loses.add(
          String.format(
              Locale.ROOT, "%.1f dB more noise of its own", exchange.selfNoiseChangeDb()));
    }
    return loses;
  }
}
