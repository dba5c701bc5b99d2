package org.standoff.answers;

import java.util.List;

/** A question with faults; it carries all that were found. */
public final class UnanswerableQuestion extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<QuestionFault> faults;

  public UnanswerableQuestion(List<QuestionFault> faults) {
    super(faults.get(0).detail());
    this.faults = List.copyOf(faults);
  }

  public List<QuestionFault> faults() {
    return faults;
  }
}
