package org.standoff.catalogue.load;

import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.util.List;
import org.standoff.catalogue.Finding;
import org.standoff.catalogue.PackSource;

/**
 * Packs that a jar on the class path brings in a folder. A jar of packs has a subclass without
 * arguments and names it in {@code META-INF/services/org.standoff.catalogue.PackSource}.
 */
public class ClassPathPacks implements PackSource {

  private final ClassLoader loader;
  private final String anchor;
  private PackFolders folder;

  /**
   * @param loader of the classes that bring the packs
   * @param anchor path of a file two below the folder of packs, such as a pack's {@code pack.yaml}
   */
  public ClassPathPacks(ClassLoader loader, String anchor) {
    this.loader = loader;
    this.anchor = anchor;
  }

  /**
   * What was started with comes after all folders, which can bring a newer version of it, but
   * before what is published, which takes the place of nothing.
   */
  @Override
  public int order() {
    return PackSource.PUBLISHED_ORDER - 1;
  }

  @Override
  public synchronized Listing list(List<String> kindFolders) {
    if (folder == null) {
      try {
        folder = new PackFolders(root(), "class path", order());
      } catch (IOException | URISyntaxException | IllegalArgumentException absent) {
        return new Listing(
            List.of(),
            List.of(
                new Finding(
                    Finding.Severity.FAULT,
                    "class path",
                    0,
                    "",
                    "no " + anchor,
                    "a jar of packs")));
      }
    }
    return folder.list(kindFolders);
  }

  @SuppressWarnings("resource") // open as long as packs may be read from it, which is for ever
  private Path root() throws IOException, URISyntaxException {
    URL url = loader.getResource(anchor);
    if (url == null) {
      throw new IOException("no " + anchor);
    }
    if (url.openConnection() instanceof JarURLConnection jar) {
      FileSystem files = FileSystems.newFileSystem(Path.of(jar.getJarFileURL().toURI()));
      return twoAbove(files.getPath("/" + jar.getEntryName()));
    }
    return twoAbove(Path.of(url.toURI()));
  }

  private static Path twoAbove(Path file) {
    return file.getParent().getParent();
  }
}
