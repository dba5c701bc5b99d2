package org.standoff.answers.kit;

import jakarta.validation.Valid;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.time.Instant;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.catalogue.ItemId;
import org.standoff.kit.Texts;

/** Is it free? The record is flat for one model, because scripts ask it as a query string. */
@Schema(
    description =
        "Which units are free from from to to? Give one model by its id, or lines of several. Lines"
            + " of one model share what there is.")
public record AvailabilityQuestion(
    @Schema(description = "One model; this or lines", examples = "boathouse/sdc-omni-1")
        @Size(max = ItemId.LONGEST)
        @Pattern(regexp = Texts.ONE_LINE)
        @Nullable String microphone,
    @Schema(description = "How many units of the one model; 1 where left out", examples = "2")
        @Min(1)
        @Max(50)
        @Nullable Integer quantity,
    @Schema(
            description =
                "Whether those must be one matched group of just that many; false where left out")
        @Nullable Boolean matched,
    @Schema(description = "Several models; this or microphone") @Size(min = 1, max = 50)
        @Nullable List<@NotNull @Valid AskedLine> lines,
    @Schema(
            description = "When they are collected, RFC 3339 with offset; belongs to the period",
            examples = "2027-06-11T10:00:00+02:00")
        @NotNull
        Instant from,
    @Schema(
            description =
                "When they come back, at most 366 days later; does not belong to the period",
            examples = "2027-06-14T11:00:00+02:00")
        @NotNull
        Instant to,
    @Schema(
            description =
                "Ids of the houses, at most 20, in the order of preference; all where left out",
            examples = "[\"ostrel-hire\", \"vennick-loan-store\"]")
        @Size(min = 1, max = 20)
        @Nullable List<@NotNull @Size(max = 64) @Pattern(regexp = Texts.ONE_LINE) String> houses,
    @Schema(
            description =
                "How many substitutes to name where a house is short of a line; 3 where left out,"
                    + " none for 0",
            examples = "3")
        @Min(0)
        @Max(10)
        @Nullable Integer substituteCount) {

  /** How many substitutes are named where the question does not say. */
  public static final int USUAL_SUBSTITUTES = 3;
}
