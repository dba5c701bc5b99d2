package org.standoff.catalogue;

import java.io.IOException;
import java.util.List;

/**
 * Where packs come from: folders, jars, what was published. Beans of this type are found by
 * themselves, and so are those that a jar on the class path names under {@code META-INF/services}.
 */
public interface PackSource {

  /** Order of what others publish: after everything that was started with. */
  int PUBLISHED_ORDER = Integer.MAX_VALUE;

  /**
   * What is there now; asked often, so it looks at files without reading them.
   *
   * @param kindFolders the folders of a pack in which its items stand
   */
  Listing list(List<String> kindFolders);

  /** Sources with a lower number come first; of two packs of one name the first is used. */
  default int order() {
    return 0;
  }

  /**
   * What a source has.
   *
   * @param packs its packs
   * @param findings what concerns none of them
   * @param withdrawn names of packs that were there and were taken back on purpose: they go at
   *     once, where a pack that is merely missing stays in use
   */
  record Listing(List<PackFiles> packs, List<Finding> findings, List<String> withdrawn) {
    public Listing {
      packs = List.copyOf(packs);
      findings = List.copyOf(findings);
      withdrawn = List.copyOf(withdrawn);
    }

    public Listing(List<PackFiles> packs, List<Finding> findings) {
      this(packs, findings, List.of());
    }
  }

  /**
   * The files of a pack.
   *
   * @param pack its name
   * @param place where it stands, for people
   * @param files files of interest
   * @param findings about files that can't be of interest
   */
  record PackFiles(String pack, String place, List<PackFile> files, List<Finding> findings) {
    public PackFiles {
      files = List.copyOf(files);
      findings = List.copyOf(findings);
    }
  }

  /** A file of a pack. */
  interface PackFile {

    /** Path inside the pack, with forward slashes: {@code microphones/ldc-multi-1.yaml}. */
    String path();

    /** Equal as long as the content is the same; told without reading it. */
    Object stamp();

    /** The first {@code most} bytes of the content. */
    byte[] read(int most) throws IOException;
  }
}
