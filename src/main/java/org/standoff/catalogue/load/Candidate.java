package org.standoff.catalogue.load;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.standoff.catalogue.Finding;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.ItemIndex;
import org.standoff.catalogue.Pack;

/**
 * A pack as its files are now, before it is known whether it can be used.
 *
 * @param name of its folder
 * @param files as read
 * @param listed findings of those who looked at the folder
 */
record Candidate(String name, List<ReadFile> files, List<Finding> listed) {
  Candidate {
    files = List.copyOf(files);
    listed = List.copyOf(listed);
  }

  /** What is wrong with single files. */
  List<Finding> findings() {
    List<Finding> findings = new ArrayList<>(listed);
    files.forEach(file -> findings.addAll(file.findings()));
    return findings;
  }

  /** The file that describes the pack, if it is there. */
  Optional<ReadFile> manifest() {
    return files.stream().filter(file -> file.path().equals(FileReading.MANIFEST)).findFirst();
  }

  /** Its items. */
  List<ItemIndex.Typed<?>> items() {
    List<ItemIndex.Typed<?>> items = new ArrayList<>();
    files.forEach(file -> file.entry().ifPresent(entry -> items.add(entry.typed())));
    return items;
  }

  /** Ids whose files have faults. */
  Set<ItemId> broken() {
    Set<ItemId> broken = new HashSet<>();
    for (ReadFile file : files) {
      if (file.entry().isEmpty() && !file.path().equals(FileReading.MANIFEST)) {
        int name = file.path().indexOf('/') + 1;
        int extension = file.path().length() - FileReading.EXTENSION.length();
        broken.add(new ItemId(name(), file.path().substring(name, extension)));
      }
    }
    return broken;
  }

  /** The packs that it may refer to, as its manifest names them. */
  List<String> uses() {
    List<String> uses = new ArrayList<>();
    manifest()
        .flatMap(ReadFile::content)
        .ifPresent(content -> content.path("uses").forEach(pack -> uses.add(pack.asText())));
    return uses;
  }

  /** What it says of itself; only for a manifest without faults. */
  Pack pack() {
    ObjectNode manifest = manifest().flatMap(ReadFile::content).orElseThrow();
    Map<String, String> digests = new HashMap<>();
    Map<String, Integer> counts = new HashMap<>();
    for (ReadFile file : files) {
      digests.put(file.path(), file.digest());
      file.entry().ifPresent(entry -> counts.merge(entry.kind().folder(), 1, Integer::sum));
    }
    return new Pack(
        name,
        manifest.path("title").asText(),
        manifest.path("version").asText(),
        manifest.path("licence").asText(),
        manifest.path("publisher").asText(),
        uses(),
        Digest.revision(Digest.of(digests)),
        counts);
  }
}
