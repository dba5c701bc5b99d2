package org.standoff.catalogue.load;

import java.io.IOException;
import java.util.List;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.standoff.catalogue.PackSource;

/** Notes which files are read. */
final class CountingSource implements PackSource {
  private final PackSource source;
  private final ConcurrentLinkedQueue<String> read = new ConcurrentLinkedQueue<>();

  CountingSource(PackSource source) {
    this.source = source;
  }

  /** Files read since the last call. */
  List<String> read() {
    List<String> paths = read.stream().sorted().toList();
    read.clear();
    return paths;
  }

  @Override
  public Listing list(List<String> kindFolders) {
    Listing listing = source.list(kindFolders);
    return new Listing(
        listing.packs().stream()
            .map(
                pack ->
                    new PackFiles(
                        pack.pack(),
                        pack.place(),
                        pack.files().stream().map(file -> counted(pack.pack(), file)).toList(),
                        pack.findings()))
            .toList(),
        listing.findings());
  }

  private PackFile counted(String pack, PackFile file) {
    return new PackFile() {
      @Override
      public String path() {
        return file.path();
      }

      @Override
      public Object stamp() {
        return file.stamp();
      }

      @Override
      public byte[] read(int most) throws IOException {
        read.add(pack + "/" + file.path());
        return file.read(most);
      }
    };
  }
}
