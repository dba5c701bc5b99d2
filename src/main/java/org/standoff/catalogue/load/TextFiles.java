package org.standoff.catalogue.load;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.standoff.catalogue.Finding;
import org.standoff.catalogue.Finding.Severity;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.PackSource.PackFile;
import org.standoff.catalogue.PackSource.PackFiles;

/** A pack whose files are texts and stand in no folder. Their paths are checked as in one. */
public final class TextFiles {

  private static final String MANIFEST = FileReading.MANIFEST;
  private static final String EXTENSION = FileReading.EXTENSION;

  private TextFiles() {}

  /**
   * The files; one whose path no folder of a pack could have is a fault.
   *
   * @param pack its name
   * @param place where it stands, for people
   * @param texts by path: {@code pack.yaml}, {@code microphones/ldc-multi-1.yaml}
   * @param kindFolders the folders of a pack in which its items stand
   */
  public static PackFiles of(
      String pack, String place, Map<String, String> texts, List<String> kindFolders) {
    List<PackFile> files = new ArrayList<>();
    List<Finding> findings = new ArrayList<>();
    new TreeMap<>(texts)
        .forEach(
            (path, text) -> {
              if (isPath(path, kindFolders)) {
                files.add(new TextFile(path, text));
              } else {
                findings.add(
                    new Finding(
                        Severity.FAULT,
                        pack + "/" + path,
                        0,
                        "",
                        path,
                        MANIFEST
                            + ", or one of "
                            + String.join(", ", kindFolders)
                            + ", a slash, and a name of "
                            + ItemId.FORM
                            + " that ends in "
                            + EXTENSION));
              }
            });
    return new PackFiles(pack, place, files, findings);
  }

  private static boolean isPath(String path, List<String> kindFolders) {
    int slash = path.indexOf('/');
    return slash < 0
        ? path.equals(MANIFEST)
        : kindFolders.contains(path.substring(0, slash))
            && path.endsWith(EXTENSION)
            && slash + 1 <= path.length() - EXTENSION.length()
            && ItemId.isPart(path.substring(slash + 1, path.length() - EXTENSION.length()));
  }

  /** Its text is its stamp: equal as long as the content is. */
  private record TextFile(String path, String text) implements PackFile {

    @Override
    public Object stamp() {
      return text;
    }

    @Override
    public byte[] read(int most) {
      byte[] bytes = text.getBytes(UTF_8);
      return bytes.length <= most ? bytes : Arrays.copyOf(bytes, most);
    }
  }
}
