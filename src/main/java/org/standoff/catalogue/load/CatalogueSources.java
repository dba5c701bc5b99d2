package org.standoff.catalogue.load;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.ServiceLoader;
import org.standoff.catalogue.PackSource;

/** Where packs come from in this service: folders that are set, jars, and what came with it. */
final class CatalogueSources {

  private static final String SHIPPED = "catalogue/schema/pack.json";

  private CatalogueSources() {}

  /**
   * @param more sources that are beans
   */
  static List<PackSource> of(CatalogueSettings settings, List<PackSource> more) {
    List<PackSource> sources = new ArrayList<>(more);
    int order = 0;
    for (Path folder : settings.folders().orElse(List.of())) {
      if (!isSame(folder, settings.shippedFolder())) {
        sources.add(new PackFolders(folder, folder.toString(), order++));
      }
    }
    ServiceLoader.load(PackSource.class).forEach(sources::add);
    ClassPathPacks inside = new ClassPathPacks(CatalogueSources.class.getClassLoader(), SHIPPED);
    Path shipped = settings.shippedFolder();
    sources.add(
        Files.isDirectory(shipped)
            ? new PackFolders(shipped, shipped.toString(), inside.order())
            : inside);
    return sources;
  }

  private static boolean isSame(Path folder, Path shipped) {
    return folder.toAbsolutePath().normalize().equals(shipped.toAbsolutePath().normalize());
  }
}
