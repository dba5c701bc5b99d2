package org.standoff.catalogue;

import java.util.Comparator;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Name of an item: {@code pack/item}, lower-case letters, digits and single hyphens. The path of
 * its file is its name.
 *
 * @param pack name of the pack
 * @param item name inside the pack and kind
 */
public record ItemId(String pack, String item) implements Comparable<ItemId> {
  /** What each of the two parts may be, for people. */
  public static final String FORM =
      "lower-case letters, digits and single hyphens, at most 64 characters";

  private static final int LONGEST_PART = 64;

  /** Characters of the longest id: two parts and the slash. */
  public static final int LONGEST = 2 * LONGEST_PART + 1;

  private static final Pattern PART = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");
  private static final Comparator<ItemId> ORDER =
      Comparator.comparing(ItemId::pack).thenComparing(ItemId::item);

  public ItemId {
    if (!isPart(pack) || !isPart(item)) {
      throw new IllegalArgumentException("an id is pack/item, each of " + FORM);
    }
  }

  /** Whether {@code text} may be the name of a pack, or of an item inside one. */
  public static boolean isPart(String text) {
    return text.length() <= LONGEST_PART && PART.matcher(text).matches();
  }

  /** The id that {@code text} spells; empty where it spells none. */
  public static Optional<ItemId> parse(String text) {
    int slash = text.indexOf('/');
    if (slash < 0) {
      return Optional.empty();
    }
    String pack = text.substring(0, slash);
    String item = text.substring(slash + 1);
    return isPart(pack) && isPart(item) ? Optional.of(new ItemId(pack, item)) : Optional.empty();
  }

  @Override
  public int compareTo(ItemId other) {
    return ORDER.compare(this, other);
  }

  @Override
  public String toString() {
    return pack + "/" + item;
  }
}
