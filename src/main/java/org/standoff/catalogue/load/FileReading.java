package org.standoff.catalogue.load;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.Finding;
import org.standoff.catalogue.Finding.Severity;
import org.standoff.catalogue.Item;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.PackSource.PackFile;
import org.standoff.catalogue.Sheet;
import org.standoff.catalogue.SheetFault;

/** Reads one file as far as that is possible without knowing the others. */
final class FileReading {

  static final String MANIFEST = "pack.yaml";
  static final String EXTENSION = ".yaml";

  private final Map<String, CatalogueKind<?>> kinds = new HashMap<>();
  private final Map<String, SchemaCheck> schemas = new HashMap<>();

  /**
   * @param kinds of items that are known, each with a folder of its own
   */
  FileReading(List<CatalogueKind<?>> kinds) {
    schemas.put(
        MANIFEST, SchemaCheck.of("catalogue/schema/pack.json", FileReading.class.getClassLoader()));
    for (CatalogueKind<?> kind : kinds) {
      if (this.kinds.put(kind.folder(), kind) != null) {
        throw new IllegalStateException("Two kinds want the folder " + kind.folder());
      }
      schemas.put(kind.folder(), SchemaCheck.of(kind));
    }
  }

  /** The folders in which a pack's items stand. */
  List<String> folders() {
    return kinds.keySet().stream().sorted().toList();
  }

  /** What is in the file now; the same as {@code before} where its bytes are the same. */
  ReadFile read(String pack, PackFile file, Optional<ReadFile> before) {
    String shown = pack + "/" + file.path();
    byte[] bytes;
    try {
      bytes = file.read(YamlFile.MOST_BYTES + 1);
    } catch (IOException unreadable) {
      Document none = YamlFile.read(new byte[0]);
      Finding finding =
          new Finding(Severity.FAULT, shown, 0, "", "a file that can't be read", "a readable file");
      return new ReadFile(file.path(), file.stamp(), "", none, Optional.empty(), List.of(finding));
    }
    String digest = Digest.of(bytes);
    if (before.isPresent() && before.get().digest().equals(digest)) {
      return before.get().restamped(file.stamp());
    }
    return read(pack, file, digest, YamlFile.read(bytes));
  }

  private ReadFile read(String pack, PackFile file, String digest, Document document) {
    String path = file.path();
    String folder = path.equals(MANIFEST) ? MANIFEST : path.substring(0, path.indexOf('/'));
    List<ReadFault> faults = new ArrayList<>(document.faults());
    if (faults.isEmpty()) {
      faults.addAll(schemas.get(folder).faults(document.content(), document.lines()));
    }
    Optional<ReadFile.Entry<?>> entry = Optional.empty();
    if (faults.isEmpty() && !path.equals(MANIFEST)) {
      String name = path.substring(path.indexOf('/') + 1, path.length() - EXTENSION.length());
      entry = entry(kinds.get(folder), new ItemId(pack, name), digest, document, faults);
    }
    String shown = pack + "/" + path;
    List<Finding> findings =
        faults.stream()
            .map(
                fault ->
                    new Finding(
                        Severity.FAULT,
                        shown,
                        fault.line(),
                        fault.pointer(),
                        fault.found(),
                        fault.expected()))
            .toList();
    return new ReadFile(path, file.stamp(), digest, document, entry, findings);
  }

  private static <T> Optional<ReadFile.Entry<?>> entry(
      CatalogueKind<T> kind, ItemId id, String digest, Document document, List<ReadFault> faults) {
    ObjectNode content = (ObjectNode) document.content();
    try {
      T value = kind.read(id, new Sheet(content));
      Item<T> item = new Item<>(id, value, content, Digest.revision(digest));
      return Optional.of(new ReadFile.Entry<>(kind, item));
    } catch (IllegalArgumentException refused) {
      String pointer = refused instanceof SheetFault located ? located.pointer() : "";
      faults.add(
          new ReadFault(
              document.lines().of(pointer),
              pointer,
              "figures that contradict each other",
              String.valueOf(refused.getMessage())));
      return Optional.empty();
    }
  }
}
