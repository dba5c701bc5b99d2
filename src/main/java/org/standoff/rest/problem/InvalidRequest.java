package org.standoff.rest.problem;

import java.util.List;

/** A request with faults; it carries all of them, so that one round trip is enough to mend it. */
public final class InvalidRequest extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient ProblemType type;
  private final transient List<Fault> faults;

  public InvalidRequest(List<Fault> faults) {
    this(ProblemType.INVALID_REQUEST, faults);
  }

  public InvalidRequest(Fault fault) {
    this(List.of(fault));
  }

  public InvalidRequest(ProblemType type, List<Fault> faults) {
    super(summary(faults));
    this.type = type;
    this.faults = List.copyOf(faults);
  }

  public ProblemType type() {
    return type;
  }

  public List<Fault> faults() {
    return faults;
  }

  ToldMembers members() {
    return faults.size() == 1
        ? ToldMembers.NONE
        : ToldMembers.of(ProblemMember.FAULT_COUNT, faults.size());
  }

  private static String summary(List<Fault> faults) {
    if (faults.isEmpty()) {
      throw new IllegalArgumentException("An invalid request has at least one fault");
    }
    String first = faults.get(0).detail();
    return faults.size() == 1 ? first : first + " (" + faults.size() + " faults, see 'errors')";
  }
}
