package org.standoff.rest.problem;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** Members with their values, in the order of {@link ProblemMember}. */
public final class ToldMembers {

  public static final ToldMembers NONE = new ToldMembers(new EnumMap<>(ProblemMember.class));

  @Schema(hidden = true)
  private final Map<ProblemMember, Object> values;

  private ToldMembers(Map<ProblemMember, Object> values) {
    this.values = values;
  }

  public static ToldMembers of(ProblemMember member, Object value) {
    return NONE.and(member, value);
  }

  /** The same with one more. */
  public ToldMembers and(ProblemMember member, Object value) {
    Map<ProblemMember, Object> more = new EnumMap<>(ProblemMember.class);
    more.putAll(values);
    more.put(member, value);
    return new ToldMembers(more);
  }

  Optional<Object> value(ProblemMember member) {
    return Optional.ofNullable(values.get(member));
  }

  @JsonAnyGetter
  Map<String, Object> asWritten() {
    Map<String, Object> written = new LinkedHashMap<>();
    values.forEach((member, value) -> written.put(member.word(), value));
    return Collections.unmodifiableMap(written);
  }

  @Override
  public boolean equals(@Nullable Object other) {
    return other instanceof ToldMembers members && members.values.equals(values);
  }

  @Override
  public int hashCode() {
    return values.hashCode();
  }

  @Override
  public String toString() {
    return values.toString();
  }
}
