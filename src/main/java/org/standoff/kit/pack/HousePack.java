package org.standoff.kit.pack;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * A pack of a house.
 *
 * @param id its name
 * @param house whose it is
 * @param files texts by their path in the pack
 * @param isWithdrawn whether the house took it back; it has no files then
 * @param revision counts its changes
 */
public record HousePack(
    String id, String house, Map<String, String> files, boolean isWithdrawn, long revision) {

  public HousePack {
    files = Collections.unmodifiableMap(new TreeMap<>(files));
  }

  /** Whether a pack of this name may be this house's. */
  public static boolean isNameOf(String house, String pack) {
    return pack.equals(house) || pack.startsWith(house + "-");
  }

  /** Where such a pack stands, for people. */
  String place() {
    return placeOf(house);
  }

  static String placeOf(String house) {
    return "published by " + house;
  }
}
