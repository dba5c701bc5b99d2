package org.standoff.rest.kit;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.time.Instant;
import java.util.List;
import java.util.UUID;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.kit.hold.HeldLine;
import org.standoff.kit.hold.HeldUnit;
import org.standoff.kit.hold.Hold;
import org.standoff.kit.hold.HoldState;
import org.standoff.kit.hold.HoldStep;
import org.standoff.rest.http.FormOfState;
import org.standoff.rest.json.EnumSpelling;

/**
 * A hold, as much of it as the caller may see.
 *
 * @param id its own
 * @param desk who holds
 * @param reference the desk's own name for it
 * @param from when the units are collected
 * @param to when they come back
 * @param state how it stands
 * @param expiresAt when it falls unless it is confirmed
 * @param madeAt when it was made
 * @param changedAt when it changed last
 * @param revision counts its changes
 * @param etag its entity tag
 * @param lines what was wanted, with the units that were promised
 * @param steps what may be done with it now
 */
@Schema(name = "Hold", description = "Units promised to a desk for a period")
@JsonInclude(JsonInclude.Include.NON_NULL)
public record HoldView(
    @Schema(
            description = "Its id; later holds sort behind earlier ones",
            examples = HoldExamples.TENTATIVE)
        String id,
    @Schema(description = "The desk that holds: the subject of its token") String desk,
    @Schema(description = "The desk's own name for it") String reference,
    @Schema(description = "When the units are collected") Instant from,
    @Schema(description = "When they come back; does not belong to the period") Instant to,
    @Schema(
            description =
                "How it stands: waiting (a second hold, without units), tentative (falls unless it is"
                    + " confirmed), confirmed, out (something was collected), returned (that is back,"
                    + " and nothing is left to collect), released,"
                    + " expired; more may come")
        HoldState state,
    @Schema(
            description =
                "When it falls unless it is confirmed; a waiting one when its period begins; absent"
                    + " where it falls no more")
        @Nullable Instant expiresAt,
    @Schema(description = "When it was made, which is its place in the line of those who wait")
        Instant madeAt,
    @Schema(description = "When it changed last") Instant changedAt,
    @Schema(description = "Counts its changes") long revision,
    @Schema(
            description =
                "Entity tag of its state, to be sent as If-Match with a step; the ETag of an answer"
                    + " names the form of the answer besides, and does as well")
        String etag,
    @Schema(
            description =
                "What was wanted, with the units that were promised; a house sees its own")
        List<HoldLine> lines,
    @Schema(description = "What may be done with it as it stands") List<NextStep> steps) {

  static final String PATH = "/v1/holds/";

  /** One line of a hold. */
  @Schema(name = "HoldLine", description = "One line of a hold")
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record HoldLine(
      @Schema(description = "Its place in the hold, counted from 1") int line,
      @Schema(description = "Id of the house that lends") String house,
      @Schema(description = "Id of the catalogue item") String microphone,
      @Schema(description = "Units that were wanted") int quantity,
      @Schema(description = "Whether they must be one matched group") boolean matched,
      @Schema(description = "Units that were promised; none while the hold waits")
          List<PromisedUnit> units) {

    static HoldLine of(HeldLine held) {
      return new HoldLine(
          held.line() + 1,
          held.wanted().house(),
          held.wanted().microphone(),
          held.wanted().quantity(),
          held.wanted().matched(),
          held.units().stream().map(PromisedUnit::of).toList());
    }
  }

  /** A unit of a hold. */
  @Schema(name = "PromisedUnit", description = "A unit of a hold")
  @JsonInclude(JsonInclude.Include.NON_NULL)
  public record PromisedUnit(
      @Schema(description = "Its serial number in its house") String serial,
      @Schema(description = "Its matched group, if it has one") @Nullable String matchedGroup,
      @Schema(
              description =
                  "How far the sensitivities of that group are apart at most, by the house's own"
                      + " measure; absent where it does not say")
          @Nullable Double matchWithinDb,
      @Schema(
              description =
                  "Charge for a day when it was promised, in minor units of the house's currency")
          long dayRateMinor,
      @Schema(
              description =
                  "What the house asked for it, where it does not come back, when it was promised;"
                      + " absent where it did not say")
          @Nullable Long replacementMinor,
      @Schema(description = "From when nobody else can have it") Instant busyFrom,
      @Schema(description = "Until when: its return and the house's turn-round") Instant busyTo,
      @Schema(description = "When it was handed over; absent before") @Nullable Instant outAt,
      @Schema(description = "When it was back; absent before") @Nullable Instant inAt) {

    static PromisedUnit of(HeldUnit held) {
      return new PromisedUnit(
          held.serial(),
          held.matchedGroup().orElse(null),
          held.matchWithinDb().orElse(null),
          held.dayRateMinor(),
          held.replacementMinor().orElse(null),
          held.busy().from(),
          held.busy().to(),
          held.outAt().orElse(null),
          held.inAt().orElse(null));
    }
  }

  /** A step that a hold takes. */
  @Schema(name = "NextStep", description = "A step that a hold takes as it stands")
  public record NextStep(
      @Schema(description = "Which step") HoldStep step,
      @Schema(description = "Who may take it: the desk that holds, or a house for its own units")
          Taker by,
      @Schema(description = "Where to POST it") String href) {

    /** Who takes a step; an admin may take all. */
    @Schema(name = "Taker", description = "Who takes a step; an admin may take all")
    public enum Taker {
      DESK,
      HOUSE
    }

    static NextStep of(String hold, HoldStep step) {
      Taker by =
          switch (step) {
            case CONFIRM, RELEASE, EXTEND -> Taker.DESK;
            case CHECK_OUT, CHECK_IN -> Taker.HOUSE;
          };
      return new NextStep(step, by, PATH + hold + "/" + EnumSpelling.of(step.name()));
    }
  }

  static HoldView of(Hold hold) {
    String id = hold.id().toString();
    return new HoldView(
        id,
        hold.desk(),
        hold.reference(),
        hold.period().from(),
        hold.period().to(),
        hold.state(),
        hold.expiresAt().orElse(null),
        hold.madeAt(),
        hold.changedAt(),
        hold.revision(),
        tag(hold.id(), hold.revision()),
        hold.lines().stream().map(HoldLine::of).toList(),
        hold.state().steps().stream().map(step -> NextStep.of(id, step)).toList());
  }

  static FormOfState tagged(Hold hold) {
    HoldView view = of(hold);
    return new FormOfState(view.etag(), view);
  }

  static String tag(UUID hold, long revision) {
    return "\"" + hold + "-" + revision + "\"";
  }
}
