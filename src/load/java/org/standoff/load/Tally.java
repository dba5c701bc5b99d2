package org.standoff.load;

import java.net.http.HttpHeaders;
import java.util.Map;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** What was answered to a group of clients, and how soon. */
final class Tally {

  private static final int SHED = 503;
  private static final Pattern TOTAL_MS = Pattern.compile("total;dur=([0-9.]+)");

  private final Map<String, AtomicInteger> answers = new ConcurrentSkipListMap<>();
  private final Spans waited = new Spans();
  private final Spans served = new Spans();

  /** An answer of what status, with a time to come again or without. */
  void answered(int status, boolean retryAfter, long tookNanos) {
    boolean shed = status == SHED && retryAfter;
    note(shed ? "503 with Retry-After" : String.valueOf(status));
    if (status < 500) {
      waited.keep(tookNanos);
    }
  }

  /** The same of an answer that tells how long the service had it. */
  void answered(int status, HttpHeaders headers, long tookNanos) {
    answered(status, headers.firstValue("Retry-After").isPresent(), tookNanos);
    Matcher total = TOTAL_MS.matcher(headers.firstValue("Server-Timing").orElse(""));
    if (status < 500 && total.find()) {
      served.keep((long) (1e6 * Double.parseDouble(total.group(1))));
    }
  }

  /** An end without an answer, by whose doing. */
  void note(String what) {
    answers.computeIfAbsent(what, any -> new AtomicInteger()).incrementAndGet();
  }

  /** As the clients saw it; of what was answered and not put off. */
  Spans waited() {
    return waited;
  }

  /** By the service's own clock, from a request's head to its answer's; of the same answers. */
  Spans served() {
    return served;
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
