package org.standoff.catalogue.load;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.standoff.catalogue.Finding;
import org.standoff.catalogue.Finding.Severity;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.NearMiss;
import org.standoff.catalogue.PackSource;

/**
 * A folder of packs: each folder in it that has a {@code pack.yaml}. Looks no deeper than a pack's
 * folders of kinds, follows no link that leaves the folder, and gives up on a folder with absurdly
 * many files. A folder inside a jar does as well.
 */
public final class PackFolders implements PackSource {

  /** Twice the largest catalogue that we promise to load quickly. */
  static final int MOST_FILES = 20_000;

  private static final String EXTENSION = FileReading.EXTENSION;

  private final Path root;
  private final String place;
  private final int order;

  /**
   * @param root the folder of packs
   * @param place what to call it to people
   * @param order as {@link #order()}
   */
  public PackFolders(Path root, String place, int order) {
    this.root = root;
    this.place = place;
    this.order = order;
  }

  @Override
  public int order() {
    return order;
  }

  @Override
  public Listing list(List<String> kindFolders) {
    List<PackFiles> packs = new ArrayList<>();
    try {
      Path real = root.toRealPath();
      Budget budget = new Budget();
      for (Path folder : children(real, budget)) {
        if (Files.isRegularFile(folder.resolve(FileReading.MANIFEST))) {
          packs.add(pack(real, folder, kindFolders, budget));
        }
      }
    } catch (TooMany tooMany) {
      return new Listing(
          List.of(), List.of(unusable("more than " + MOST_FILES + " files", "fewer files")));
    } catch (IOException gone) {
      return new Listing(packs, List.of(unusable("no folder", "a folder that can be read")));
    }
    return new Listing(packs, List.of());
  }

  /** How many files may still be looked at. */
  private static final class Budget {
    private int left = MOST_FILES;

    void spend() throws TooMany {
      left--;
      if (left < 0) {
        throw new TooMany();
      }
    }
  }

  private static final class TooMany extends IOException {
    private static final long serialVersionUID = 1L;
  }

  private Finding unusable(String found, String expected) {
    return new Finding(Severity.FAULT, place, 0, "", found, expected);
  }

  private PackFiles pack(Path real, Path folder, List<String> kindFolders, Budget budget)
      throws IOException {
    String pack = name(folder);
    List<PackFile> files = new ArrayList<>();
    Notes notes = new Notes(pack);
    if (!ItemId.isPart(pack)) {
      notes.fault("", pack, "a folder named with " + ItemId.FORM);
      return new PackFiles(pack, place, files, notes.findings);
    }
    for (Path child : children(folder, budget)) {
      String name = name(child);
      if (!staysInside(real, child)) {
        notes.fault(name, "a link that leaves the folder of packs", "files of the pack itself");
      } else if (name.equals(FileReading.MANIFEST)) {
        look(child, name, notes).ifPresent(files::add);
      } else if (Files.isDirectory(child)) {
        if (kindFolders.contains(name)) {
          items(real, child, name, notes, budget, files);
        } else {
          String near = NearMiss.of(name, kindFolders).orElse(String.join(", ", kindFolders));
          notes.note(name, "a folder of no known kind", near);
        }
      } else if (name.endsWith(EXTENSION)) {
        notes.note(name, "an item outside of a kind's folder", String.join(", ", kindFolders));
      }
    }
    return new PackFiles(pack, place, files, notes.findings);
  }

  private static void items(
      Path real, Path folder, String kind, Notes notes, Budget budget, List<PackFile> files)
      throws IOException {
    for (Path child : children(folder, budget)) {
      String name = name(child);
      String path = kind + "/" + name;
      if (!staysInside(real, child)) {
        notes.fault(path, "a link that leaves the folder of packs", "a file of the pack itself");
      } else if (!name.endsWith(EXTENSION)) {
        notes.note(path, "a file that is not read", "the extension " + EXTENSION);
      } else if (!ItemId.isPart(name.substring(0, name.length() - EXTENSION.length()))) {
        notes.fault(path, name, "a file named with " + ItemId.FORM);
      } else {
        look(child, path, notes).ifPresent(files::add);
      }
    }
  }

  private static Optional<PackFile> look(Path file, String path, Notes notes) throws IOException {
    BasicFileAttributes attributes;
    try {
      attributes = Files.readAttributes(file, BasicFileAttributes.class);
    } catch (NoSuchFileException goneMeanwhile) {
      return Optional.empty();
    }
    if (!attributes.isRegularFile()) {
      notes.fault(path, "no ordinary file", "an ordinary file");
      return Optional.empty();
    }
    Stamp stamp =
        new Stamp(
            attributes.lastModifiedTime().toInstant(),
            attributes.size(),
            String.valueOf(attributes.fileKey()));
    return Optional.of(new FolderFile(file, path, stamp));
  }

  /** Hidden files are an editor's or a version control's own affair. */
  private static List<Path> children(Path folder, Budget budget) throws IOException {
    List<Path> children = new ArrayList<>();
    try (Stream<Path> all = Files.list(folder)) {
      for (Path child : (Iterable<Path>) all::iterator) {
        budget.spend();
        if (!name(child).startsWith(".")) {
          children.add(child);
        }
      }
    }
    children.sort(Path::compareTo);
    return children;
  }

  private static boolean staysInside(Path real, Path child) throws IOException {
    try {
      return !Files.isSymbolicLink(child) || child.toRealPath().startsWith(real);
    } catch (NoSuchFileException nowhere) {
      return false;
    }
  }

  private static String name(Path path) {
    String name = String.valueOf(path.getFileName());
    return name.endsWith("/") ? name.substring(0, name.length() - 1) : name;
  }

  /** Findings about a pack's files. */
  private static final class Notes {
    private final String pack;
    private final List<Finding> findings = new ArrayList<>();

    Notes(String pack) {
      this.pack = pack;
    }

    void fault(String path, String found, String expected) {
      findings.add(new Finding(Severity.FAULT, shown(path), 0, "", found, expected));
    }

    void note(String path, String found, String expected) {
      findings.add(new Finding(Severity.NOTE, shown(path), 0, "", found, expected));
    }

    private String shown(String path) {
      return path.isEmpty() ? pack : pack + "/" + path;
    }
  }

  private record Stamp(Instant modified, long bytes, String file) {}

  private record FolderFile(Path file, String path, Object stamp) implements PackFile {
    @Override
    public byte[] read(int most) throws IOException {
      try (InputStream in = Files.newInputStream(file)) {
        return in.readNBytes(most);
      }
    }
  }
}
