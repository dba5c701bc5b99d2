package org.standoff.catalogue.load;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.standoff.catalogue.CheckScope;
import org.standoff.catalogue.Finding;
import org.standoff.catalogue.Finding.Severity;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.ItemIndex;
import org.standoff.catalogue.PackStatus;

/**
 * Decides for each pack which version is in use: the files as they are now if they have no fault,
 * else the last good version. A pack comes after the packs that it uses.
 */
final class PackAssembly {

  private final Map<String, Candidate> candidates;
  private final Map<String, GoodPack> lastGood;
  private final Instant now;
  private final Map<String, GoodPack> inUse = new TreeMap<>();
  private final Map<String, PackStatus> statuses = new TreeMap<>();
  private final Set<String> begun = new HashSet<>();

  PackAssembly(Map<String, Candidate> candidates, Map<String, GoodPack> lastGood, Instant now) {
    this.candidates = candidates;
    this.lastGood = lastGood;
    this.now = now;
    lastGood.keySet().stream().filter(name -> !candidates.containsKey(name)).forEach(this::vanish);
    candidates.keySet().forEach(this::settle);
  }

  /** The version of each pack that is in use. */
  Map<String, GoodPack> inUse() {
    return inUse;
  }

  /** How each pack stands, by name. */
  List<PackStatus> statuses() {
    return List.copyOf(statuses.values());
  }

  private void vanish(String name) {
    Finding gone =
        new Finding(
            Severity.FAULT,
            name + "/" + FileReading.MANIFEST,
            0,
            "",
            "no such pack any more",
            "the pack; its last good version stays in use until the service starts anew");
    conclude(name, Optional.of(lastGood.get(name)), List.of(gone));
  }

  private void settle(String name) {
    if (!begun.add(name)) {
      return;
    }
    Candidate candidate = candidates.get(name);
    List<Finding> findings = new ArrayList<>(candidate.findings());
    List<ItemIndex.Typed<?>> known = new ArrayList<>(candidate.items());
    findings.addAll(manifestFindings(candidate));
    for (String used : candidate.uses()) {
      if (candidates.containsKey(used)) {
        settle(used);
      }
      Optional.ofNullable(inUse.get(used)).ifPresent(pack -> known.addAll(pack.items()));
    }
    findings.addAll(usesFindings(candidate));
    findings.addAll(itemFindings(candidate, new ItemIndex(known)));
    Optional<GoodPack> last = Optional.ofNullable(lastGood.get(name));
    boolean faulty = findings.stream().anyMatch(Finding::isFault);
    conclude(name, faulty ? last : Optional.of(latest(candidate, last)), findings);
  }

  private void conclude(String name, Optional<GoodPack> version, List<Finding> findings) {
    version.ifPresent(good -> inUse.put(name, good));
    statuses.put(
        name,
        new PackStatus(name, version.map(GoodPack::pack), findings, version.map(GoodPack::loaded)));
  }

  private GoodPack latest(Candidate candidate, Optional<GoodPack> last) {
    GoodPack latest = new GoodPack(candidate.pack(), candidate.items(), now);
    return last.filter(good -> good.pack().equals(latest.pack())).orElse(latest);
  }

  private static List<Finding> manifestFindings(Candidate candidate) {
    String file = candidate.name() + "/" + FileReading.MANIFEST;
    Optional<ReadFile> manifest = candidate.manifest();
    if (manifest.isEmpty()) {
      return List.of(new Finding(Severity.FAULT, file, 0, "", "nothing", "a pack.yaml"));
    }
    String id = manifest.get().content().map(c -> c.path("id").asText()).orElse("");
    if (id.isEmpty() || id.equals(candidate.name())) {
      return List.of();
    }
    int line = manifest.get().document().lines().of("/id");
    String expected = candidate.name() + ", the name of the pack's folder";
    return List.of(new Finding(Severity.FAULT, file, line, "/id", id, expected));
  }

  private List<Finding> usesFindings(Candidate candidate) {
    List<Finding> findings = new ArrayList<>();
    List<String> uses = candidate.uses();
    for (int i = 0; i < uses.size(); i++) {
      if (!inUse.containsKey(uses.get(i))) {
        String pointer = "/uses/" + i;
        findings.add(
            new Finding(
                Severity.FAULT,
                candidate.name() + "/" + FileReading.MANIFEST,
                candidate.manifest().orElseThrow().document().lines().of(pointer),
                pointer,
                uses.get(i),
                "a pack that is there, has a version without faults, and does not use this one"));
      }
    }
    return findings;
  }

  private static List<Finding> itemFindings(Candidate candidate, ItemIndex known) {
    List<Finding> findings = new ArrayList<>();
    List<String> packs = new ArrayList<>(candidate.uses());
    packs.add(candidate.name());
    Set<ItemId> broken = candidate.broken();
    for (ReadFile file : candidate.files()) {
      CheckScope scope =
          new CheckScope(
              candidate.name() + "/" + file.path(),
              file.document().lines()::of,
              packs,
              known,
              broken,
              findings);
      file.entry().ifPresent(entry -> entry.check(scope));
    }
    return findings;
  }
}
