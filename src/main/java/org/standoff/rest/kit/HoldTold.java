package org.standoff.rest.kit;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.kit.Texts;
import org.standoff.kit.hold.HoldWish;

/**
 * What a desk wants to hold.
 *
 * @param reference the desk's own name for it
 * @param from when the units are collected
 * @param to when they come back
 * @param lines what is wanted, in one or several houses
 * @param lifetimeMin how long it stands unconfirmed; two days where left out
 * @param second whether it may wait where units are short; false where left out
 */
@Schema(name = "HoldTold", description = "What a desk wants to hold: all of it or nothing")
public record HoldTold(
    @Schema(
            description = "The desk's own name for it; no two holds of a desk have the same",
            examples = "saltlight-2027-06",
            pattern = Texts.NAME)
        @NotBlank
        @Size(max = 64)
        @Pattern(regexp = Texts.ONE_LINE)
        String reference,
    @Schema(
            description =
                "When the units are collected, RFC 3339 with offset; the houses must be open then",
            examples = "2027-06-11T10:00:00+02:00")
        @NotNull
        Instant from,
    @Schema(
            description =
                "When they come back, at most 366 days later; does not belong to the period. The"
                    + " houses must be open then or have a drop-box",
            examples = "2027-06-14T11:00:00+02:00")
        @NotNull
        Instant to,
    @Schema(description = "What is wanted, in one or several houses")
        @NotNull
        @Size(min = 1, max = 50)
        @Valid
        List<@NotNull HoldLineTold> lines,
    @Schema(
            description =
                "Minutes that it stands unconfirmed, from the moment in which it has its units; two"
                    + " days where left out",
            examples = "2880")
        @Min(1)
        @Max(HoldTold.LONGEST_LIFETIME_MIN)
        Integer lifetimeMin,
    @Schema(
            description =
                "Whether it may wait, as a second hold, where units are short; it gets them when"
                    + " they fall free, all of them or none, and falls when its period begins; false"
                    + " where left out")
        Boolean second) {

  /** Four weeks. */
  static final int LONGEST_LIFETIME_MIN = 40_320;

  HoldWish wish() {
    return new HoldWish(
        reference,
        AskedTimes.period(from, to),
        lines.stream().map(HoldLineTold::wanted).toList(),
        lifetimeMin == null ? HoldWish.USUAL_LIFETIME : Duration.ofMinutes(lifetimeMin),
        Boolean.TRUE.equals(second));
  }
}
