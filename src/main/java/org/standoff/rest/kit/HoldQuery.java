package org.standoff.rest.kit;

import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.kit.Texts;
import org.standoff.kit.hold.HoldSearch;
import org.standoff.kit.hold.HoldState;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.problem.ProblemType;

/**
 * Which holds are wanted.
 *
 * @param house with a line at this house
 * @param reference of this reference
 * @param state that stand so
 * @param from that are not over by then
 * @param to that begin before then
 */
@Schema(name = "HoldQuery", description = "Which holds are wanted")
public record HoldQuery(
    @Schema(description = "Only holds with a line at this house", examples = HoldExamples.HOUSE)
        @Size(max = 64)
        @Pattern(regexp = Texts.ONE_LINE)
        String house,
    @Schema(
            description = "Only holds to which the desk gave this name",
            examples = "saltlight-2027-06")
        @Size(max = 64)
        @Pattern(regexp = Texts.ONE_LINE)
        String reference,
    @Schema(description = "Only holds that stand so") HoldState state,
    @Schema(description = "Only holds that are not over by then", examples = "2027-06-01T00:00:00Z")
        Instant from,
    @Schema(description = "Only holds that begin before then", examples = "2027-07-01T00:00:00Z")
        Instant to) {

  HoldSearch search() {
    List<Fault> faults = new ArrayList<>();
    check(from, "from", faults);
    check(to, "to", faults);
    if (!faults.isEmpty()) {
      throw new InvalidRequest(ProblemType.RULE_BROKEN, faults);
    }
    return new HoldSearch(
        Optional.ofNullable(house),
        Optional.ofNullable(reference),
        Optional.ofNullable(state),
        Optional.ofNullable(from).map(AskedTimes::exact),
        Optional.ofNullable(to).map(AskedTimes::exact));
  }

  private static void check(Instant moment, String parameter, List<Fault> faults) {
    if (moment != null) {
      AskedTimes.outsideInQuery(moment, parameter).ifPresent(faults::add);
    }
  }
}
