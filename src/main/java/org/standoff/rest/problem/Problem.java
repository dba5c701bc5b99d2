package org.standoff.rest.problem;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.annotation.JsonUnwrapped;
import java.net.URI;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.answers.CpuCost;

/**
 * What a caller is told when something is wrong (RFC 9457).
 *
 * @param type address of the page that explains this kind of problem
 * @param title the kind of problem, the same every time
 * @param status the HTTP status
 * @param detail what is wrong this time
 * @param instance the request, as {@code urn:uuid:} and its {@code Request-Id}
 * @param code the kind of problem, for programs
 * @param errors every fault that was found, each with its place
 * @param cost what a calculation would cost that is too dear
 * @param members what else belongs to this kind of problem, written as members of its own (RFC
 *     9457, 3.2)
 * @param inTheWay a record whose members are written in the same way
 */
@JsonInclude(JsonInclude.Include.NON_EMPTY)
@Schema(name = "Problem", description = "What is wrong (RFC 9457)")
public record Problem(
    @Schema(
            description = "Address of the page that explains this kind of problem",
            format = "uri-reference")
        URI type,
    @Schema(description = "The kind of problem, the same every time") String title,
    @Schema(description = "The HTTP status") int status,
    @Schema(description = "What is wrong this time") String detail,
    @Schema(description = "The request, as urn:uuid: and its Request-Id") URI instance,
    @Schema(description = "The kind of problem, for programs; more codes may come") String code,
    @Schema(description = "Every fault that was found, each with its place") List<Fault> errors,
    @Schema(
            description =
                "What a calculation would cost that is too dear, beside what there is; absent"
                    + " elsewhere")
        @Nullable CpuCost cost,
    @Schema(hidden = true) @JsonUnwrapped ToldMembers members,
    @Schema(hidden = true) @JsonUnwrapped @Nullable Object inTheWay) {

  /** The media type of every problem. */
  public static final String MEDIA_TYPE = "application/problem+json";

  /** The language of every text that this service writes, whatever is asked for. */
  public static final String LANGUAGE = "en";

  public Problem {
    errors = List.copyOf(errors);
  }

  public static Problem of(
      ProblemType type,
      String detail,
      List<Fault> errors,
      ToldMembers members,
      @Nullable Object inTheWay,
      String requestId) {
    return new Problem(
        type.uri(),
        type.title(),
        type.status(),
        detail,
        URI.create("urn:uuid:" + requestId),
        type.name(),
        errors,
        null,
        members,
        inTheWay);
  }

  /** The same with what was estimated. */
  Problem costing(@Nullable CpuCost estimate) {
    return new Problem(
        type, title, status, detail, instance, code, errors, estimate, members, inTheWay);
  }
}
