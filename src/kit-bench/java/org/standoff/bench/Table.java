package org.standoff.bench;

import java.util.Locale;
import org.standoff.load.Figures;

/** Prints figures, each beside how busy the machine was. */
final class Table {

  private Table() {}

  static void row(String name, String figure) {
    System.out.printf(Locale.ROOT, "%-52s %-26s load %s%n", name, figure, Figures.load());
  }
}
