package org.standoff.contract.generated;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Sends what was made of a description and gathers what is not as it says. */
final class Run {
  private static final int MOST_FINDINGS = 200;

  private final Service service;
  private final Judge judge;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<Expected, Integer> sent = new EnumMap<>(Expected.class);
  private int count;

  Run(Service service, Judge judge) {
    this.service = service;
    this.judge = judge;
  }

  void send(List<Case> cases) {
    for (Case one : cases) {
      if (findings.size() < MOST_FINDINGS) {
        count++;
        sent.merge(one.expected(), 1, Integer::sum);
        findings.addAll(judge.judge(one, service.send(one.call())));
      }
    }
  }

  int count() {
    return count;
  }

  Map<Expected, Integer> sent() {
    return sent;
  }

  List<Finding> findings() {
    return findings;
  }
}
