package org.standoff.catalogue.load;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import org.standoff.catalogue.CatalogueKind;
import org.standoff.catalogue.CheckScope;
import org.standoff.catalogue.Finding;
import org.standoff.catalogue.Item;
import org.standoff.catalogue.ItemIndex;

/**
 * A file as it was read, kept until it changes.
 *
 * @param path inside its pack
 * @param stamp what the file had when it was read
 * @param digest SHA-256 of its bytes, in hexadecimal digits
 * @param document what it says
 * @param entry the item that it describes; absent for pack.yaml and where there are faults
 * @param findings about this file alone
 */
record ReadFile(
    String path,
    Object stamp,
    String digest,
    Document document,
    Optional<Entry<?>> entry,
    List<Finding> findings) {

  ReadFile {
    findings = List.copyOf(findings);
  }

  /** An item beside its kind, so that the kind can check it when all others are known. */
  record Entry<T>(CatalogueKind<T> kind, Item<T> item) {

    void check(CheckScope scope) {
      kind.check(item, scope);
    }

    ItemIndex.Typed<T> typed() {
      return new ItemIndex.Typed<>(kind.type(), item);
    }
  }

  /** The same file under another stamp: it was written again without a change. */
  ReadFile restamped(Object newStamp) {
    return new ReadFile(path, newStamp, digest, document, entry, findings);
  }

  /** Whether the file could not be read at all. */
  boolean isUnread() {
    return digest.isEmpty();
  }

  /** The file's content where it is one mapping. */
  Optional<ObjectNode> content() {
    return document.content() instanceof ObjectNode object ? Optional.of(object) : Optional.empty();
  }
}
