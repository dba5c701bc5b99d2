package org.standoff.kit.stock;

import java.util.List;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.ItemIndex;
import org.standoff.kit.pack.PublishedPacks;

/** Checks of kits without the service. */
public final class KitChecks {

  private KitChecks() {}

  /** No microphone is known to it. */
  public static KitCheck ofAnEmptyCatalogue() {
    Catalogue empty = new Catalogue("empty", List.of(), List.of(), new ItemIndex(List.of()));
    return new KitCheck(() -> empty, new PublishedPacks());
  }
}
