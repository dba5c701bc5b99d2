package org.standoff.rest.problem;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A sound request that can't be met as things stand. It carries what stands in its way, as members
 * of the problem beside the usual ones (RFC 9457, 3.2).
 */
public final class Clash extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient @Nullable Object inTheWay;
  private final transient ToldMembers members;

  public Clash(String detail) {
    this(detail, null, ToldMembers.NONE);
  }

  private Clash(String detail, @Nullable Object inTheWay, ToldMembers members) {
    super(detail);
    this.inTheWay = inTheWay;
    this.members = members;
  }

  /** The same with what stands in the way: a record whose members become those of the problem. */
  public Clash with(Object record) {
    return new Clash(getMessage(), record, members);
  }

  /** The same with members of its own. */
  public Clash telling(ToldMembers more) {
    return new Clash(getMessage(), inTheWay, more);
  }

  Optional<Object> inTheWay() {
    return Optional.ofNullable(inTheWay);
  }

  ToldMembers members() {
    return members;
  }
}
