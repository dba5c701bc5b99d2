package org.standoff.rest.kit;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.Digits;
import jakarta.validation.constraints.Max;
import jakarta.validation.constraints.Min;
import jakarta.validation.constraints.NotBlank;
import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.math.BigDecimal;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.kit.Texts;
import org.standoff.rest.json.TakesBack;

/**
 * What a house tells of itself.
 *
 * @param title its name for people
 * @param zone IANA name of its time zone
 * @param currency ISO 4217 code in which it charges
 * @param hours when it is open; left out: at all times
 * @param turnRoundMin minutes between a return and the next collection; 0 where left out
 * @param dropBox whether kit may come back outside the hours; false where left out
 * @param weekendDays days charged for a Saturday and the Sunday after it; 2 where left out
 * @param minimumChargeMinor least charge for a hold; 0 where left out
 */
@TakesBack(HouseView.class)
@Schema(name = "HouseTold", description = "What a house tells of itself")
public record HouseTold(
    @Schema(description = "Its name for people", examples = "Quillmoor Store", pattern = Texts.NAME)
        @NotBlank
        @Size(max = 120)
        @Pattern(regexp = Texts.ONE_LINE)
        String title,
    @Schema(
            description =
                "IANA name of the time zone in which its days begin and end and its door opens",
            examples = "Europe/Vienna")
        @NotNull
        @Size(max = 64)
        String zone,
    @Schema(description = "ISO 4217 code of the currency in which it charges", examples = "EUR")
        @NotNull
        @Size(max = 3)
        @Pattern(regexp = "[A-Z]{3}")
        String currency,
    @Schema(
            description =
                "When it is open, the same every week; where left out it is open at all times")
        @Size(max = HouseTold.MOST_SPANS)
        List<@Valid @NotNull OpenSpan> hours,
    @Schema(
            description = "Minutes between a return and the next collection; 0 where left out",
            examples = "240")
        @Min(0)
        @Max(HouseTold.LONGEST_TURN_ROUND_MIN)
        Integer turnRoundMin,
    @Schema(
            description =
                "Whether kit may come back outside its hours, to be checked in at the next opening;"
                    + " false where left out")
        Boolean dropBox,
    @Schema(
            description =
                "Days charged for a Saturday and the Sunday after it together; one of them without"
                    + " the other is half of that; 2 where left out",
            examples = "1.5")
        @DecimalMin("0")
        @DecimalMax("2")
        @Digits(integer = 1, fraction = 2)
        BigDecimal weekendDays,
    @Schema(
            description =
                "Least charge for a hold, in minor units of the currency; 0 where left out",
            examples = "6000")
        @Min(0)
        @Max(HouseTold.MOST_MINOR)
        Long minimumChargeMinor) {

  static final int MOST_SPANS = 28;

  /** Four weeks, as the table has it. */
  static final int LONGEST_TURN_ROUND_MIN = 40_320;

  static final long MOST_MINOR = 1_000_000_000;
}
