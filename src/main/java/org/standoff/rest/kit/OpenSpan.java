package org.standoff.rest.kit;

import jakarta.validation.constraints.NotNull;
import jakarta.validation.constraints.Pattern;
import jakarta.validation.constraints.Size;
import java.time.DayOfWeek;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.kit.house.OpeningHours;

/**
 * One stretch of one day during which a house is open.
 *
 * @param day of the week
 * @param opens by the clock on the house's wall
 * @param closes by the same clock, after it opens
 */
@Schema(
    name = "OpenSpan",
    description = "One stretch of one day during which a house is open, by the clock on its wall")
public record OpenSpan(
    @Schema(description = "Day of the week") @NotNull DayOfWeek day,
    @Schema(description = "When the door opens", examples = "08:00")
        @NotNull
        @Size(max = 5)
        @Pattern(regexp = OpenSpan.OPENS)
        String opens,
    @Schema(
            description = "When it closes, after it opens; 24:00 is the end of the day",
            examples = "17:30")
        @NotNull
        @Size(max = 5)
        @Pattern(regexp = OpenSpan.CLOSES)
        String closes) {

  static final String OPENS = "([01]\\d|2[0-3]):[0-5]\\d";
  static final String CLOSES = OPENS + "|24:00";

  static OpenSpan of(OpeningHours.Span span) {
    return new OpenSpan(span.day(), span.opens().toString(), span.closesText());
  }
}
