package org.standoff.contract.generated;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Sends what was made of a description and gathers what is not as it says. */
final class Run implements AutoCloseable {
  /** More of one kind at one operation tell nothing new. */
  private static final int MOST_ALIKE = 4;

  private final Service service;
  private final Judge judge;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, Integer> alike = new HashMap<>();
  private final Map<Expected, Integer> sent = new ConcurrentHashMap<>();
  private final Map<Expected, Integer> answered = new ConcurrentHashMap<>();
  private final ExecutorService senders;
  private int count;

  /**
   * @param atOnce how many requests are under way at the same time
   */
  Run(Service service, Judge judge, int atOnce) {
    this.senders = Executors.newFixedThreadPool(atOnce);
    this.service = service;
    this.judge = judge;
  }

  /** Several at once, in no order. */
  void send(List<Case> cases) {
    List<Callable<List<Finding>>> tasks = new ArrayList<>();
    for (Case one : cases) {
      tasks.add(() -> judge.judge(one, reply(one)));
    }
    count += cases.size();
    try {
      for (Future<List<Finding>> found : senders.invokeAll(tasks)) {
        found.get().forEach(this::keep);
      }
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    } catch (ExecutionException failed) {
      throw new IllegalStateException(failed.getCause());
    }
  }

  /** One alone, whose answer the next depends on. */
  Reply sendAlone(Case one) {
    count++;
    Reply reply = reply(one);
    judge.judge(one, reply).forEach(this::keep);
    return reply;
  }

  private Reply reply(Case one) {
    Reply reply = service.send(one.call());
    sent.merge(one.expected(), 1, Integer::sum);
    if (reply.isGood()) {
      answered.merge(one.expected(), 1, Integer::sum);
    }
    return reply;
  }

  void keep(Finding finding) {
    if (alike.merge(finding.kind() + finding.operation(), 1, Integer::sum) <= MOST_ALIKE) {
      findings.add(finding);
    }
  }

  String curl(Call call) {
    return judge.curl(call);
  }

  int count() {
    return count;
  }

  Map<Expected, Integer> sent() {
    return sent;
  }

  /** How many of what was sent in an expectation had a good answer, of 1. */
  double share(Expected expected) {
    return answered.getOrDefault(expected, 0) / (double) sent.getOrDefault(expected, 0);
  }

  List<Finding> findings() {
    return findings;
  }

  /** What was sent, and all findings, in a file for those who don't want to scroll. */
  String report(Path file) {
    StringBuilder text = new StringBuilder();
    new TreeMap<>(sent)
        .forEach(
            (expected, calls) ->
                text.append(
                    "%s: %d sent, %d answered%n"
                        .formatted(expected, calls, answered.getOrDefault(expected, 0))));
    text.append('\n');
    findings.forEach(finding -> text.append(finding).append("\n\n"));
    try {
      Files.createDirectories(file.getParent());
      // half of a surrogate pair, which was sent too, is no UTF-8: a question mark stands for it
      Files.write(file, text.toString().getBytes(StandardCharsets.UTF_8));
    } catch (IOException unwritable) {
      throw new UncheckedIOException(unwritable);
    }
    return text.toString();
  }

  @Override
  public void close() {
    senders.shutdownNow();
  }
}
