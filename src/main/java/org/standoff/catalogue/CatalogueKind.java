package org.standoff.catalogue;

import java.util.Map;

/**
 * A kind of item: where its files stand, how they are checked, and which record they describe. Each
 * bean of this type is found by itself, so a new kind touches no class that is there.
 *
 * @param <T> the record that a file describes
 */
public interface CatalogueKind<T> {

  /** The word for one item: {@code microphone}. */
  String name();

  /** The folder in a pack, and the noun in addresses: {@code microphones}. */
  String folder();

  /** The record's class, under which the catalogue is asked. No two kinds share one. */
  Class<T> type();

  /** The JSON Schema (2020-12) of a file, on the class path. */
  default String schemaResource() {
    return "catalogue/schema/" + name() + ".json";
  }

  /**
   * The record of a file which has passed the schema.
   *
   * @throws IllegalArgumentException when figures contradict each other so that there is no record
   */
  T read(ItemId id, Sheet sheet);

  /**
   * Tells what is wrong inside the item that no schema can see, and which references lead nowhere.
   */
  default void check(Item<T> item, CheckScope scope) {}

  /** What a row of a list tells besides id and title: flat, names with their unit, same for all. */
  default Map<String, Object> summary(T value) {
    return Map.of();
  }
}
