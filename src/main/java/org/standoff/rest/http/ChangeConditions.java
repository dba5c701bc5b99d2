package org.standoff.rest.http;

import jakarta.ws.rs.core.HttpHeaders;
import java.util.Arrays;
import java.util.List;
import java.util.function.LongFunction;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.standoff.kit.Precondition;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.problem.PreconditionWanted;
import org.standoff.rest.problem.Stale;

/**
 * What a change supposes about the state of what it changes (RFC 9110, 13.1). {@code If-Match} with
 * the entity tag is wanted to change what exists (428 without, RFC 6585; 412 where the tag is not
 * that of the present state, or of any form of it, with the present one told); {@code
 * If-None-Match: *} means: create only. What does not exist yet may be made without either, because
 * nothing can be lost.
 *
 * <pre>
 * Precondition stands = ChangeConditions.of(headers).on(revision -&gt; tag(id, revision));
 * units.put(caller, unit, stands); // asks it in its transaction
 * </pre>
 */
public final class ChangeConditions {

  private static final String ANY = "*";
  private static final Pattern TAG = Pattern.compile("(W/)?\"[\\x21\\x23-\\x7E]*\"");

  private final @Nullable List<String> ifMatch;
  private final boolean createOnly;

  private ChangeConditions(@Nullable List<String> ifMatch, boolean createOnly) {
    this.ifMatch = ifMatch;
    this.createOnly = createOnly;
  }

  /**
   * Reads the two headers.
   *
   * @throws InvalidRequest if one of them can't be read, or has no meaning for a change
   */
  public static ChangeConditions of(HttpHeaders headers) {
    return of(
        headers.getHeaderString(HttpHeaders.IF_MATCH),
        headers.getHeaderString(HttpHeaders.IF_NONE_MATCH));
  }

  static ChangeConditions of(@Nullable String ifMatch, @Nullable String ifNoneMatch) {
    if (ifNoneMatch != null && !ifNoneMatch.strip().equals(ANY)) {
      throw new InvalidRequest(
          fault(HttpHeaders.IF_NONE_MATCH, "On a change it can only say: create.")
              .found(ifNoneMatch)
              .allowed(ANY));
    }
    return new ChangeConditions(ifMatch == null ? null : tags(ifMatch), ifNoneMatch != null);
  }

  /**
   * The same as a question for the transaction that changes something.
   *
   * @param tag the entity tag of a revision, with its quotes
   */
  public Precondition on(LongFunction<String> tag) {
    return revision -> check(revision.isPresent() ? tag.apply(revision.getAsLong()) : null);
  }

  private void check(@Nullable String current) {
    if (current == null) {
      if (ifMatch != null) {
        throw Stale.notThere();
      }
      return;
    }
    if (createOnly) {
      throw Stale.nowAt(current);
    }
    if (ifMatch == null) {
      throw new PreconditionWanted();
    }
    boolean matches =
        ifMatch.contains(ANY)
            || ifMatch.stream().anyMatch(tag -> EntityTags.isOfState(tag, current));
    if (!matches) {
      throw Stale.nowAt(current);
    }
  }

  /** A weak tag never matches here: RFC 9110, 13.1.1 wants the strong comparison. */
  private static List<String> tags(String header) {
    if (header.strip().equals(ANY)) {
      return List.of(ANY);
    }
    List<String> tags = Arrays.stream(header.split(",", -1)).map(String::strip).toList();
    for (String tag : tags) {
      if (!TAG.matcher(tag).matches()) {
        throw new InvalidRequest(
            fault(HttpHeaders.IF_MATCH, "This is no entity tag: one has its quotes.")
                .found(tag)
                .allowed("the 'ETag' of the last answer, with its quotes"));
      }
    }
    return tags;
  }

  private static Fault fault(String header, String detail) {
    return Fault.ofParameter(header, FaultCode.WRONG_FORM, detail);
  }
}
