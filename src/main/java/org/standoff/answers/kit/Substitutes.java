package org.standoff.answers.kit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.standoff.advice.Cautions;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.Item;
import org.standoff.catalogue.ItemId;
import org.standoff.chain.Exchange;
import org.standoff.chain.Microphone;
import org.standoff.chain.Powering;
import org.standoff.kit.free.Alternatives;
import org.standoff.kit.free.Shelf;
import org.standoff.kit.free.WantedLine;

/**
 * Finds what could stand in for a microphone that is not to be had: what the house has free of
 * other models, those first with which least is lost. What is lost follows from the two sheets;
 * nobody has listed which model may replace which.
 */
final class Substitutes implements Alternatives {
  /** Less is not worth a word. */
  private static final double WORTH_TELLING_DB = 0.05;

  private final Catalogue catalogue;

  /** By wanted model: every other that was compared with it. */
  private final Map<String, Map<String, Optional<Ranked>>> compared = new HashMap<>();

  Substitutes(Catalogue catalogue) {
    this.catalogue = catalogue;
  }

  private record Ranked(Microphone microphone, Exchange exchange) {}

  @Override
  public List<String> of(WantedLine wanted, Collection<String> models) {
    return ranked(wanted, models).map(one -> one.microphone().id()).toList();
  }

  /**
   * The best so many; none for a line that wants no microphone of the catalogue.
   *
   * @param shelves all that were looked at
   * @param wanted the line that is short
   * @param house where it is
   */
  List<Substitute> of(List<Shelf> shelves, WantedLine wanted, String house, int limit) {
    Map<String, Shelf> free =
        shelves.stream()
            .filter(shelf -> shelf.model().house().equals(house))
            .filter(shelf -> shelf.lots().meet(wanted))
            .collect(Collectors.toMap(shelf -> shelf.model().microphone(), Function.identity()));
    return ranked(wanted, free.keySet())
        .limit(limit)
        .flatMap(
            one ->
                Stream.ofNullable(free.get(one.microphone().id()))
                    .flatMap(
                        shelf ->
                            microphone(wanted.microphone()).stream()
                                .map(lost -> told(one, lost, shelf))))
        .toList();
  }

  private Stream<Ranked> ranked(WantedLine wanted, Collection<String> models) {
    Map<String, Optional<Ranked>> known =
        compared.computeIfAbsent(wanted.microphone(), any -> new HashMap<>());
    return models.stream()
        .flatMap(
            model ->
                known.computeIfAbsent(model, other -> ranked(wanted.microphone(), other)).stream())
        .sorted(
            Comparator.comparing(Ranked::exchange, Exchange.LEAST_LOST_FIRST)
                .thenComparing(one -> one.microphone().id()));
  }

  private Optional<Ranked> ranked(String wanted, String model) {
    if (model.equals(wanted)) {
      return Optional.empty();
    }
    Optional<Microphone> lost = microphone(wanted);
    return microphone(model)
        .filter(other -> lost.isPresent())
        .filter(other -> other.outputs().size() >= lost.get().outputs().size())
        .map(other -> new Ranked(other, Exchange.of(lost.get(), other)));
  }

  private Optional<Microphone> microphone(String id) {
    return ItemId.parse(id)
        .flatMap(parsed -> catalogue.find(Microphone.class, parsed))
        .map(Item::value);
  }

  private static Substitute told(Ranked one, Microphone lost, Shelf shelf) {
    Exchange exchange = one.exchange();
    Powering.Need wanted = lost.powering().need();
    Powering.Need instead = one.microphone().powering().need();
    return new Substitute(
        one.microphone().id(),
        one.microphone().title(),
        shelf.freeCount(),
        leastRate(shelf),
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
