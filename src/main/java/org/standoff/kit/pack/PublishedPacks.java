package org.standoff.kit.pack;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.PackSource;
import org.standoff.catalogue.load.TextFiles;

/**
 * The packs of houses as this instance knows them. What it knows outlives a lost database, because
 * no calculation waits for one.
 */
@ApplicationScoped
public class PublishedPacks implements PackSource {

  private volatile Map<String, HousePack> known = Map.of();

  @Override
  public int order() {
    return PUBLISHED_ORDER;
  }

  @Override
  public Listing list(List<String> kindFolders) {
    List<PackFiles> packs = new ArrayList<>();
    List<String> withdrawn = new ArrayList<>();
    for (HousePack pack : known.values()) {
      if (pack.isWithdrawn()) {
        withdrawn.add(pack.id());
      } else {
        packs.add(TextFiles.of(pack.id(), pack.place(), pack.files(), kindFolders));
      }
    }
    return new Listing(packs, List.of(), withdrawn);
  }

  /** Whether a house has published a pack of this name. */
  boolean has(String pack) {
    return known.containsKey(pack);
  }

  /** Whether a microphone is in a pack that a house has published, as far as is known here. */
  public boolean offers(String microphone) {
    return ItemId.parse(microphone)
        .filter(
            id -> {
              HousePack pack = known.get(id.pack());
              return pack != null && pack.files().containsKey(PackedMicrophones.pathOf(id));
            })
        .isPresent();
  }

  /**
   * Looks what changed, and reads only that.
   *
   * @return whether anything did
   */
  synchronized boolean refresh(Connection connection) throws SQLException {
    Map<String, HousePack> before = known;
    Map<String, Long> revisions = PackRows.revisions(connection);
    List<String> changed = new ArrayList<>();
    revisions.forEach(
        (id, revision) -> {
          HousePack pack = before.get(id);
          if (pack == null || pack.revision() != revision) {
            changed.add(id);
          }
        });
    if (changed.isEmpty() && before.keySet().equals(revisions.keySet())) {
      return false;
    }
    Map<String, HousePack> now = new TreeMap<>(before);
    now.keySet().retainAll(revisions.keySet());
    PackRows.named(connection, changed).forEach(pack -> now.put(pack.id(), pack));
    known = now;
    return true;
  }
}
