package org.standoff.advice;

import java.util.List;

/**
 * Which microphones serve, best first, and why the others don't.
 *
 * @param ranked best first; of equals in the order of their ids
 * @param refused those that fail a requirement, or clip where another does not, by id
 */
public record Advice(List<Ranked> ranked, List<Refusal> refused) {
  public Advice {
    ranked = List.copyOf(ranked);
    refused = List.copyOf(refused);
  }
}
