package org.standoff.catalogue.load;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.standoff.catalogue.Finding;
import org.standoff.catalogue.Finding.Severity;
import org.standoff.catalogue.PackSource;
import org.standoff.catalogue.PackSource.PackFile;
import org.standoff.catalogue.PackSource.PackFiles;

/**
 * What the sources have at one moment, unread. Two are equal when every file has the stamp that it
 * had.
 */
final class Sight {

  private final Map<String, PackFiles> packs = new TreeMap<>();
  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, Object> stamps = new HashMap<>();
  private final Set<String> withdrawn = new TreeSet<>();
  private final Map<String, PackSource> origins = new HashMap<>();
  private final Set<PackSource> unread = new HashSet<>();

  private Sight() {}

  /** Of two packs of one name the one of the earlier source counts. */
  static Sight of(List<PackSource> sources, List<String> kindFolders) {
    Sight sight = new Sight();
    for (PackSource source : sources) {
      PackSource.Listing listing = source.list(kindFolders);
      sight.findings.addAll(listing.findings());
      listing.packs().forEach(pack -> sight.add(pack, source));
      if (listing.findings().stream().anyMatch(Finding::isFault)) {
        sight.unread.add(source);
      }
      sight.withdrawn.addAll(listing.withdrawn());
    }
    sight.withdrawn.removeAll(sight.packs.keySet());
    for (PackFiles pack : sight.packs.values()) {
      for (PackFile file : pack.files()) {
        sight.stamps.put(key(pack, file), file.stamp());
      }
    }
    return sight;
  }

  /** Names a file among all of all sources. */
  static String key(PackFiles pack, PackFile file) {
    return pack.place() + '\0' + pack.pack() + '\0' + file.path();
  }

  /** The packs by name. */
  Map<String, PackFiles> packs() {
    return packs;
  }

  /** What concerns no pack. */
  List<Finding> findings() {
    return findings;
  }

  /** Packs that were taken back on purpose, and that no source has. */
  Set<String> withdrawn() {
    return withdrawn;
  }

  /**
   * Where each pack comes from, whatever stands in for it meanwhile.
   *
   * @param before the same before this look
   */
  Map<String, PackSource> origins(Map<String, PackSource> before) {
    Map<String, PackSource> now = new HashMap<>(before);
    origins.forEach((pack, source) -> now.merge(pack, source, this::stays));
    return now;
  }

  /** A source that can't be read now is not one that gave its packs up. */
  private PackSource stays(PackSource before, PackSource now) {
    return unread.contains(before) ? before : now;
  }

  /** Whether a pack is here from the place where it belongs. */
  boolean isFrom(String pack, Map<String, PackSource> wanted) {
    return origins.get(pack) == wanted.get(pack);
  }

  private void add(PackFiles pack, PackSource source) {
    PackFiles first = packs.putIfAbsent(pack.pack(), pack);
    origins.putIfAbsent(pack.pack(), source);
    if (first != null) {
      findings.add(
          new Finding(
              Severity.NOTE,
              pack.pack(),
              0,
              "",
              "the pack " + pack.pack() + " in " + pack.place() + " as well",
              "one place: it is read from " + first.place()));
    }
  }

  private List<List<Finding>> packFindings() {
    return packs.values().stream().map(PackFiles::findings).toList();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Sight sight
        && stamps.equals(sight.stamps)
        && findings.equals(sight.findings)
        && withdrawn.equals(sight.withdrawn)
        && packFindings().equals(sight.packFindings());
  }

  @Override
  public int hashCode() {
    return stamps.hashCode();
  }
}
