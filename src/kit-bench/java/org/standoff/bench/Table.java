package org.standoff.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Prints figures, each beside how busy the machine was. */
final class Table {

  private Table() {}

  static void row(String name, String figure) {
    System.out.printf(Locale.ROOT, "%-52s %-26s load %s%n", name, figure, load());
  }

  /** Mean of the processes that wanted a core, over the last minute. */
  static String load() {
    try {
      return Files.readString(Path.of("/proc/loadavg")).split(" ")[0];
    } catch (IOException notLinux) {
      return "unknown";
    }
  }
}
