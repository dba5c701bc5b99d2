package org.standoff.catalogue.load;

import io.smallrye.config.ConfigMapping;
import io.smallrye.config.WithDefault;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;

/** Settings of the catalogue. */
@ConfigMapping(prefix = "standoff.catalogue")
public interface CatalogueSettings {

  /**
   * Folders of packs, besides the packs that come with the service. Of two packs of one name the
   * one in the earlier folder counts, and both before one that came with the service.
   */
  Optional<List<Path>> folders();

  /**
   * Where the packs that come with the service are looked for first, so that they can be edited; if
   * there is no such folder, those inside the jar are used.
   */
  @WithDefault("catalogue")
  Path shippedFolder();

  /** How often all files are looked at. A change is in use two looks later. */
  @WithDefault("0.5s")
  Duration lookEvery();
}
