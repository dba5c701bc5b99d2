package org.standoff.rest.problem;

import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A change that was made for another state than the present one. */
public final class Stale extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final @Nullable String currentTag;

  private Stale(String message, @Nullable String currentTag) {
    super(message);
    this.currentTag = currentTag;
  }

  /** It exists, in the state that this tag names. */
  public static Stale nowAt(String currentTag) {
    return new Stale(
        "It is now at " + currentTag + ", which is not what was supposed.", currentTag);
  }

  /** It does not exist. */
  public static Stale notThere() {
    return new Stale("It does not exist, and 'If-Match' supposes that it does.", null);
  }

  ToldMembers members() {
    return currentTag()
        .map(tag -> ToldMembers.of(ProblemMember.CURRENT_ETAG, tag))
        .orElse(ToldMembers.NONE);
  }

  /** The present entity tag, if the thing exists. */
  public Optional<String> currentTag() {
    return Optional.ofNullable(currentTag);
  }
}
