package org.standoff.answers.kit;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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

  /**
   * A model that could stand in.
   *
   * @param unmatched whether it only could where units need not be matched after all
   */
  private record Ranked(Microphone microphone, Exchange exchange, boolean unmatched) {
    static final Comparator<Ranked> LEAST_LOST_FIRST =
        Comparator.comparingInt(Ranked::lostProperties)
            .thenComparing(Ranked::exchange, Exchange.LEAST_LOST_FIRST)
            .thenComparing(one -> one.microphone().id());

    private int lostProperties() {
      return exchange.lacks().size() + (unmatched ? 1 : 0);
    }
  }

  @Override
  public List<String> of(WantedLine wanted, Collection<String> models) {
    return models.stream()
        .flatMap(model -> exchange(wanted, model).stream())
        .sorted(Ranked.LEAST_LOST_FIRST)
        .map(one -> one.microphone().id())
        .toList();
  }

  /**
   * The best so many; none for a line that wants no microphone of the catalogue. What other lines
   * want of a model stays theirs; which of two short lines gets what could stand in for both is for
   * the caller to say.
   *
   * @param shelves all that were looked at
   * @param wanted the line that is short
   * @param others what else is wanted of the house
   * @param house where it is short
   */
  List<Substitute> of(
      List<Shelf> shelves, WantedLine wanted, List<WantedLine> others, String house, int limit) {
    Optional<Microphone> lost = microphone(wanted.microphone());
    Map<Ranked, Shelf> found = new TreeMap<>(Ranked.LEAST_LOST_FIRST);
    for (Shelf shelf : shelves) {
      String model = shelf.model().microphone();
      boolean asWanted = shelf.lots().meet(instead(model, wanted, wanted.matched(), others));
      boolean anyHow = asWanted || shelf.lots().meet(instead(model, wanted, false, others));
      if (shelf.model().house().equals(house) && anyHow) {
        exchange(wanted, model)
            .map(one -> new Ranked(one.microphone(), one.exchange(), !asWanted))
            .ifPresent(one -> found.put(one, shelf));
      }
    }
    return found.entrySet().stream()
        .limit(limit)
        .flatMap(
            one ->
                lost.stream()
                    .map(microphone -> told(one.getKey(), microphone, one.getValue(), wanted)))
        .toList();
  }

  /** The lines of a question or wish without one of them. */
  static List<WantedLine> besides(List<WantedLine> lines, int line) {
    List<WantedLine> others = new ArrayList<>(lines);
    others.remove(line);
    return others;
  }

  /** All that would then be wanted of a model. */
  private static List<WantedLine> instead(
      String model, WantedLine wanted, boolean matched, List<WantedLine> others) {
    return Stream.concat(
            Stream.of(new WantedLine(model, wanted.quantity(), matched)),
            others.stream().filter(other -> other.microphone().equals(model)))
        .toList();
  }

  /**
   * The model in the place of the wanted one, of which itself is one where matching is given up.
   */
  private Optional<Ranked> exchange(WantedLine wanted, String model) {
    return model.equals(wanted.microphone()) && !wanted.matched()
        ? Optional.empty()
        : compared
            .computeIfAbsent(wanted.microphone(), any -> new HashMap<>())
            .computeIfAbsent(model, other -> compare(wanted.microphone(), other));
  }

  private Optional<Ranked> compare(String wanted, String model) {
    Optional<Microphone> lost = microphone(wanted);
    return microphone(model)
        .filter(other -> lost.isPresent())
        .filter(other -> other.outputs().size() >= lost.get().outputs().size())
        .map(other -> new Ranked(other, Exchange.of(lost.get(), other), false));
  }

  private Optional<Microphone> microphone(String id) {
    return ItemId.parse(id)
        .flatMap(parsed -> catalogue.find(Microphone.class, parsed))
        .map(Item::value);
  }

  private static Substitute told(Ranked one, Microphone lost, Shelf shelf, WantedLine wantedLine) {
    Exchange exchange = one.exchange();
    Powering.Need wanted = lost.powering().need();
    Powering.Need instead = one.microphone().powering().need();
    return new Substitute(
        one.microphone().id(),
        one.microphone().title(),
        shelf.freeCount(),
        wantedLine.matched() && !one.unmatched(),
        leastRate(shelf),
        exchange.maximumChangeDb(),
        exchange.limitChangeDb(),
        exchange.selfNoiseChangeDb(),
        exchange.sensitivityChangeDb(),
        exchange.lacks(),
        wanted == instead
            ? Optional.empty()
            : Optional.of(new Substitute.PoweringChange(wanted, instead)),
        loses(one),
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

  private static List<String> loses(Ranked one) {
    Exchange exchange = one.exchange();
    List<String> loses = new ArrayList<>();
    if (one.unmatched()) {
      loses.add("not a matched group");
    }
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
