package org.standoff.kit;

import java.util.Comparator;

/**
 * What a house has of one microphone; its units stand in for each other.
 *
 * @param house id of the house
 * @param microphone id of the catalogue item
 */
public record Model(String house, String microphone) implements Comparable<Model> {

  private static final Comparator<Model> ORDER =
      Comparator.comparing(Model::house).thenComparing(Model::microphone);

  @Override
  public int compareTo(Model other) {
    return ORDER.compare(this, other);
  }
}
