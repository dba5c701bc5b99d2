package org.standoff.catalogue;

import java.util.List;
import java.util.Optional;

/**
 * The catalogue at one moment: what a request finds in it belongs together, whatever happens to the
 * files meanwhile. Never changes.
 */
public final class Catalogue {

  private final String revision;
  private final List<PackStatus> packs;
  private final List<Finding> findings;
  private final ItemIndex items;

  /**
   * @param revision digest over the packs in use
   * @param packs every pack that is or was there, in the order of their names
   * @param findings what concerns no pack, such as a folder that is not there
   * @param items of the packs in use
   */
  public Catalogue(
      String revision, List<PackStatus> packs, List<Finding> findings, ItemIndex items) {
    this.revision = revision;
    this.packs = List.copyOf(packs);
    this.findings = List.copyOf(findings);
    this.items = items;
  }

  /** Names the content: the same files give the same revision on every machine. */
  public String revision() {
    return revision;
  }

  /** Every pack that is or was there, in the order of their names. */
  public List<PackStatus> packs() {
    return packs;
  }

  /** The pack of that name, if one is or was there. */
  public Optional<PackStatus> pack(String id) {
    return packs.stream().filter(pack -> pack.id().equals(id)).findFirst();
  }

  /** What concerns no pack, such as a folder that is not there. */
  public List<Finding> findings() {
    return findings;
  }

  /** The item of that id, if there is one. */
  public <T> Optional<Item<T>> find(Class<T> type, ItemId id) {
    return items.find(type, id);
  }

  /** All items of a type, in the order of their ids. */
  public <T> List<Item<T>> items(Class<T> type) {
    return items.items(type);
  }

  /** The id that was probably meant by {@code id}, which need not be well-formed. */
  public Optional<String> suggest(Class<?> type, String id) {
    return items.suggest(type, id);
  }

  /** Whether there is anything to answer with. */
  public boolean hasPackInUse() {
    return packs.stream().anyMatch(pack -> pack.live().isPresent());
  }
}
