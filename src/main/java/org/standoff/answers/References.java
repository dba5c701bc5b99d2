package org.standoff.answers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Dynamic;
import org.standoff.acoustics.Placement;
import org.standoff.acoustics.Source;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.Item;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.NearMiss;
import org.standoff.catalogue.PackStatus;

/**
 * Resolves the references of one question against one catalogue snapshot and gathers every fault on
 * the way, so that one round trip is enough to mend the question.
 */
public final class References {
  /** The pack, so to speak, of what comes with a question: {@code inline/microphones-0}. */
  private static final String INLINE_PACK = "inline";

  private final Catalogue catalogue;
  private final InlineItems inline;
  private final List<QuestionFault> faults = new ArrayList<>();

  public References(Catalogue catalogue, InlineItems inline) {
    this.catalogue = catalogue;
    this.inline = inline;
  }

  /** The snapshot that everything is resolved against. */
  public Catalogue catalogue() {
    return catalogue;
  }

  /** Notes a fault. */
  public void fault(QuestionFault fault) {
    faults.add(fault);
  }

  /** Ends the question where faults were noted. */
  public void refuseFaulty() {
    if (!faults.isEmpty()) {
      throw new UnanswerableQuestion(faults);
    }
  }

  /**
   * An id, or an item in the form of its catalogue file.
   *
   * @param type the record that the kind describes
   * @param node the reference
   * @param pointer where it stands in the question
   */
  public <T> Optional<Resolved<T>> resolve(Class<T> type, JsonNode node, String pointer) {
    if (node.isTextual()) {
      return byId(type, node.textValue(), pointer);
    }
    if (node.isObject()) {
      ItemId id = new ItemId(INLINE_PACK, pointer.substring(1).replace('/', '-'));
      return inline
          .read(type, id, node, pointer, faults::add)
          .map(item -> new Resolved<>(id.toString(), item));
    }
    fault(
        QuestionFault.of(pointer, QuestionFault.Kind.WRONG_TYPE, "Give an id, or the item itself.")
            .found(node)
            .allowed("an id (pack/item) or an object"));
    return Optional.empty();
  }

  /** An item by its id. */
  public <T> Optional<Resolved<T>> byId(Class<T> type, String id, String pointer) {
    Optional<T> item =
        ItemId.parse(id).flatMap(parsed -> catalogue.find(type, parsed)).map(Item::value);
    if (item.isEmpty()) {
      fault(
          QuestionFault.of(
                  pointer,
                  QuestionFault.Kind.UNKNOWN_ITEM,
                  "The catalogue has no " + inline.kindName(type) + " of this id.")
              .found(id)
              .suggestion(catalogue.suggest(type, id)));
    }
    return item.map(found -> new Resolved<>(id, found));
  }

  /** A source at one of its placements. */
  public Optional<Played> played(
      JsonNode source,
      @Nullable String placement,
      @Nullable Dynamic dynamic,
      @Nullable Double levelOffsetDb,
      String pointer) {
    Optional<Resolved<Source>> resolved = resolve(Source.class, source, pointer + "/source");
    return resolved.flatMap(
        found ->
            placement(found, placement, pointer)
                .map(place -> Played.of(found, place, dynamic, levelOffsetDb)));
  }

  /** A source as a neighbour hears it: at the named placement, or its first. */
  public Optional<Played> firstPlacement(
      JsonNode source,
      @Nullable String placement,
      @Nullable Dynamic dynamic,
      @Nullable Double levelOffsetDb,
      String pointer) {
    if (placement != null) {
      return played(source, placement, dynamic, levelOffsetDb, pointer);
    }
    return resolve(Source.class, source, pointer + "/source")
        .map(
            found ->
                Played.of(
                    found,
                    found.item().placements().values().iterator().next(),
                    dynamic,
                    levelOffsetDb));
  }

  private Optional<Placement> placement(
      Resolved<Source> source, @Nullable String id, String pointer) {
    var placements = source.item().placements();
    if (id != null && placements.containsKey(id)) {
      return Optional.of(placements.get(id));
    }
    if (id == null && placements.size() == 1) {
      return Optional.of(placements.values().iterator().next());
    }
    String all = String.join(", ", placements.keySet());
    fault(
        id == null
            ? QuestionFault.of(
                    pointer + "/placement",
                    QuestionFault.Kind.MISSING,
                    source.id() + " has more than one placement: say which.")
                .allowed(all)
            : QuestionFault.of(
                    pointer + "/placement",
                    QuestionFault.Kind.UNKNOWN_VALUE,
                    source.id() + " has no placement of this name.")
                .found(id)
                .allowed(all)
                .suggestion(NearMiss.of(id, placements.keySet())));
    return Optional.empty();
  }

  /** All items of a kind, of one pack where it is named. */
  public <T> Collection<T> all(Class<T> type, @Nullable String pack, String pointer) {
    if (pack != null && catalogue.pack(pack).isEmpty()) {
      List<String> packs = catalogue.packs().stream().map(PackStatus::id).toList();
      fault(
          QuestionFault.of(
                  pointer, QuestionFault.Kind.UNKNOWN_ITEM, "The catalogue has no pack of this id.")
              .found(pack)
              .suggestion(NearMiss.of(pack, packs)));
      return List.of();
    }
    List<T> all = new ArrayList<>();
    for (Item<T> item : catalogue.items(type)) {
      if (pack == null || item.id().pack().equals(pack)) {
        all.add(item.value());
      }
    }
    return all;
  }
}
