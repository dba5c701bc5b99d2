package org.standoff.rest.json;

import org.standoff.answers.QuestionFault;
import org.standoff.answers.UnanswerableQuestion;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.problem.ProblemType;

/** Tells the faults of a well-formed question in the words of this interface. */
public final class QuestionFaults {
  private QuestionFaults() {}

  /** As places of a body. */
  public static InvalidRequest inBody(UnanswerableQuestion question) {
    return new InvalidRequest(
        ProblemType.RULE_BROKEN,
        question.faults().stream().map(QuestionFaults::atPointer).toList());
  }

  /** As parameters of a query. */
  public static InvalidRequest inQuery(UnanswerableQuestion question) {
    return new InvalidRequest(
        ProblemType.RULE_BROKEN,
        question.faults().stream()
            .map(QuestionFaults::atPointer)
            .map(QueryTree::asParameter)
            .toList());
  }

  private static Fault atPointer(QuestionFault fault) {
    return Fault.atPointer(fault.pointer(), code(fault.kind()), fault.detail())
        .found(fault.found().orElse(null))
        .allowed(fault.allowed().orElse(null))
        .suggestion(fault.suggestion().orElse(null));
  }

  private static FaultCode code(QuestionFault.Kind kind) {
    return switch (kind) {
      case UNKNOWN_ITEM -> FaultCode.UNKNOWN_ITEM;
      case UNKNOWN_VALUE -> FaultCode.UNKNOWN_VALUE;
      case MISSING -> FaultCode.MISSING;
      case WRONG_TYPE -> FaultCode.WRONG_TYPE;
      case WRONG_FORM -> FaultCode.WRONG_FORM;
      case OUT_OF_RANGE -> FaultCode.OUT_OF_RANGE;
      case CONTRADICTION -> FaultCode.CONTRADICTION;
    };
  }
}
