package org.standoff.catalogue;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A pack as it is in use.
 *
 * @param id its name, and that of its folder
 * @param title the name for people
 * @param version what its publisher calls this state of it
 * @param licence under which it may be used
 * @param publisher who answers for it
 * @param uses packs whose items it may refer to
 * @param revision digest over all of its files
 * @param counts number of items by the folder of their kind
 */
public record Pack(
    String id,
    String title,
    String version,
    String licence,
    String publisher,
    List<String> uses,
    String revision,
    Map<String, Integer> counts) {

  public Pack {
    uses = List.copyOf(uses);
    counts = Collections.unmodifiableMap(new TreeMap<>(counts));
  }
}
