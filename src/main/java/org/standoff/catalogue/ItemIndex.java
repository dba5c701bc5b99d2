package org.standoff.catalogue;

import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;

/** Items by the record that they are, in the order of their ids; never changes. */
public final class ItemIndex {

  private final Map<Class<?>, NavigableMap<ItemId, Item<?>>> byType = new HashMap<>();

  /**
   * @param items each under the type that its kind declares
   */
  public ItemIndex(Collection<? extends Typed<?>> items) {
    for (Typed<?> typed : items) {
      byType
          .computeIfAbsent(typed.type(), type -> new TreeMap<>())
          .put(typed.item().id(), typed.item());
    }
  }

  /** An item with the type that its kind declares. */
  public record Typed<T>(Class<T> type, Item<T> item) {}

  /** The item of that id, if there is one. */
  @SuppressWarnings("unchecked") // filled under the type that the kind declares for it
  public <T> Optional<Item<T>> find(Class<T> type, ItemId id) {
    return Optional.ofNullable((Item<T>) shelf(type).get(id));
  }

  /** All items of a type, in the order of their ids. */
  @SuppressWarnings("unchecked") // as above
  public <T> List<Item<T>> items(Class<T> type) {
    return shelf(type).values().stream().map(item -> (Item<T>) item).toList();
  }

  /** The id that was probably meant by {@code id}. */
  public Optional<String> suggest(Class<?> type, String id) {
    List<String> known = shelf(type).keySet().stream().map(ItemId::toString).toList();
    return NearMiss.of(id, known).or(() -> sameName(type, id));
  }

  /** The right name in a wrong pack is farther by letters than it is by meaning. */
  private Optional<String> sameName(Class<?> type, String id) {
    String name = id.substring(id.indexOf('/') + 1);
    return shelf(type).keySet().stream()
        .filter(known -> known.item().equals(name))
        .map(ItemId::toString)
        .findFirst();
  }

  private NavigableMap<ItemId, Item<?>> shelf(Class<?> type) {
    return byType.getOrDefault(type, Collections.emptyNavigableMap());
  }
}
