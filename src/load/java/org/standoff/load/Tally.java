package org.standoff.load;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Collectors;

/** What was answered to a group of clients, and how soon. */
final class Tally {

  private static final int SHED = 503;

  private final Map<String, AtomicInteger> answers = new ConcurrentSkipListMap<>();
  private final AtomicInteger count = new AtomicInteger();
  private volatile long[] nanos = new long[1 << 16];

  /** An answer of what status, with a time to come again or without. */
  void answered(int status, boolean retryAfter, long took) {
    boolean shed = status == SHED && retryAfter;
    note(shed ? "503 with Retry-After" : String.valueOf(status));
    if (status < 500) {
      keep(took);
    }
  }

  /** An end without an answer, by whose doing. */
  void note(String what) {
    answers.computeIfAbsent(what, any -> new AtomicInteger()).incrementAndGet();
  }

  private synchronized void keep(long took) {
    int n = count.getAndIncrement();
    if (n == nanos.length) {
      nanos = Arrays.copyOf(nanos, 2 * n);
    }
    nanos[n] = took;
  }

  int answered() {
    return count.get();
  }

  /** So many percent took no longer, in ms; of what was answered and not put off. */
  synchronized double percentileMs(int percent) {
    long[] sorted = Arrays.copyOf(nanos, count.get());
    Arrays.sort(sorted);
    return sorted.length == 0 ? Double.NaN : sorted[(sorted.length - 1) * percent / 100] / 1e6;
  }

  /** Server faults that are none of {@code 503} with a time to come again. */
  int faults() {
    return answers.entrySet().stream()
        .filter(answer -> answer.getKey().matches("5\\d\\d"))
        .mapToInt(answer -> answer.getValue().get())
        .sum();
  }

  /** How often what. */
  String answers() {
    return answers.entrySet().stream()
        .map(answer -> answer.getKey() + " × " + answer.getValue())
        .collect(Collectors.joining(", "));
  }
}
