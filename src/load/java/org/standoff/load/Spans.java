package org.standoff.load;

import java.util.Arrays;

/** How long each of many answers took. */
final class Spans {

  private long[] nanos = new long[1 << 16];
  private int count;

  synchronized void keep(long took) {
    if (count == nanos.length) {
      nanos = Arrays.copyOf(nanos, 2 * count);
    }
    nanos[count++] = took;
  }

  synchronized int count() {
    return count;
  }

  /** So many percent took no longer, in ms; not a number where there are none. */
  synchronized double percentileMs(int percent) {
    long[] sorted = Arrays.copyOf(nanos, count);
    Arrays.sort(sorted);
    return count == 0 ? Double.NaN : sorted[(count - 1) * percent / 100] / 1e6;
  }
}
