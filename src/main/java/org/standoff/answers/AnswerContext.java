package org.standoff.answers;

import jakarta.enterprise.context.ApplicationScoped;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.standoff.catalogue.CurrentCatalogue;

/** What every answer rests on besides its question: a snapshot and the engine. */
@ApplicationScoped
public class AnswerContext {
  private final CurrentCatalogue current;
  private final InlineItems inline;
  private final CpuBudget budget;
  private final String engineVersion;

  AnswerContext(
      CurrentCatalogue current,
      InlineItems inline,
      CpuBudget budget,
      @ConfigProperty(name = "quarkus.application.version") String engineVersion) {
    this.current = current;
    this.inline = inline;
    this.budget = budget;
    this.engineVersion = engineVersion;
  }

  /** References of one question, against the snapshot of now. */
  public References references() {
    return new References(current.get(), inline);
  }

  /** What the request may still compute. */
  public CpuBudget budget() {
    return budget;
  }

  /** Version of the calculation, which every answer names. */
  public String engineVersion() {
    return engineVersion;
  }
}
