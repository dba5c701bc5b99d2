package org.standoff.catalogue.load;

import java.time.InstantSource;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.CurrentCatalogue;
import org.standoff.catalogue.ItemIndex;
import org.standoff.catalogue.PackSource;
import org.standoff.catalogue.PackSource.PackFile;
import org.standoff.catalogue.PackSource.PackFiles;
import org.standoff.catalogue.PackStatus;

/**
 * The catalogue that follows its sources. A new snapshot is made aside and swapped whole; readers
 * never wait. Only files with a new stamp are read again, on all processors.
 */
public final class LiveCatalogue implements CurrentCatalogue {

  private final FileReading reading;
  private final List<PackSource> sources;
  private final InstantSource clock;

  private volatile Catalogue current =
      new Catalogue(
          Digest.revision(Digest.of(Map.of())), List.of(), List.of(), new ItemIndex(List.of()));

  private Optional<Sight> loaded = Optional.empty();
  private Map<String, ReadFile> files = Map.of();
  private Map<String, GoodPack> good = Map.of();
  private Map<String, PackSource> origins = Map.of();

  /**
   * @param kinds of items that are known
   * @param sources of packs
   * @param clock that says when a pack was loaded
   */
  public LiveCatalogue(
      List<CatalogueKind<?>> kinds, List<PackSource> sources, InstantSource clock) {
    this.reading = new FileReading(kinds);
    this.sources = sources.stream().sorted(Comparator.comparingInt(PackSource::order)).toList();
    this.clock = clock;
  }

  /** The snapshot of now; empty before the first {@link #reload()}. */
  @Override
  public Catalogue get() {
    return current;
  }

  /** Looks at the sources, reads what changed, and swaps the snapshot. */
  public synchronized Catalogue reload() {
    Sight sight = look();
    if (loaded.isPresent() && loaded.get().equals(sight)) {
      return current;
    }
    files = read(sight);
    good = new HashMap<>(good);
    good.keySet().removeAll(sight.withdrawn());
    origins = sight.origins(origins);
    Map<String, Candidate> candidates = candidates(sight);
    // another edition of a pack whose folder is away would be other figures under the same names
    candidates.keySet().removeIf(name -> !sight.isFrom(name, origins));
    PackAssembly assembly = new PackAssembly(candidates, good, clock.instant());
    good = assembly.inUse();
    // what could not be read is tried again, although nothing shows from outside
    loaded =
        files.values().stream().anyMatch(ReadFile::isUnread)
            ? Optional.empty()
            : Optional.of(sight);
    current = snapshot(assembly, sight);
    return current;
  }

  /**
   * How a pack would stand if its files were these, beside the packs that are there; nothing is
   * changed. The files are read and checked as those of a folder are.
   *
   * @param pack its name
   * @param place where it would stand, for people
   * @param texts by path in the pack
   */
  public synchronized PackStatus tryOut(String pack, String place, Map<String, String> texts) {
    PackFiles files = TextFiles.of(pack, place, texts, reading.folders());
    List<ReadFile> read =
        files.files().stream().map(file -> reading.read(pack, file, Optional.empty())).toList();
    Map<String, Candidate> candidates = loaded.map(this::candidates).orElseGet(TreeMap::new);
    candidates.put(pack, new Candidate(pack, read, files.findings()));
    Map<String, GoodPack> others = new HashMap<>(good);
    others.remove(pack);
    return new PackAssembly(candidates, others, clock.instant())
        .statuses().stream().filter(status -> status.id().equals(pack)).findFirst().orElseThrow();
  }

  /** What the sources have now. */
  Sight look() {
    return Sight.of(sources, reading.folders());
  }

  /** Whether the snapshot is made from what is seen. */
  synchronized boolean isMadeFrom(Sight sight) {
    return loaded.isPresent() && loaded.get().equals(sight);
  }

  private record Reading(String key, String pack, PackFile file, Optional<ReadFile> before) {}

  private Map<String, ReadFile> read(Sight sight) {
    Map<String, ReadFile> known = new HashMap<>();
    List<Reading> wanted = new ArrayList<>();
    for (PackFiles pack : sight.packs().values()) {
      for (PackFile file : pack.files()) {
        String key = Sight.key(pack, file);
        Optional<ReadFile> before = Optional.ofNullable(files.get(key));
        if (before.isPresent()
            && !before.get().isUnread()
            && file.stamp().equals(before.get().stamp())) {
          known.put(key, before.get());
        } else {
          wanted.add(new Reading(key, pack.pack(), file, before));
        }
      }
    }
    known.putAll(
        wanted.parallelStream()
            .collect(
                Collectors.toMap(Reading::key, r -> reading.read(r.pack(), r.file(), r.before()))));
    return known;
  }

  private Map<String, Candidate> candidates(Sight sight) {
    Map<String, Candidate> candidates = new TreeMap<>();
    sight
        .packs()
        .forEach(
            (name, pack) -> {
              List<ReadFile> read =
                  pack.files().stream().map(file -> files.get(Sight.key(pack, file))).toList();
              candidates.put(name, new Candidate(name, read, pack.findings()));
            });
    return candidates;
  }

  private static Catalogue snapshot(PackAssembly assembly, Sight sight) {
    Map<String, String> revisions = new HashMap<>();
    List<ItemIndex.Typed<?>> items = new ArrayList<>();
    assembly
        .inUse()
        .forEach(
            (name, pack) -> {
              revisions.put(name, pack.pack().revision());
              items.addAll(pack.items());
            });
    return new Catalogue(
        Digest.revision(Digest.of(revisions)),
        assembly.statuses(),
        sight.findings(),
        new ItemIndex(items));
  }
}
