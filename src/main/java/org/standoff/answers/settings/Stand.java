package org.standoff.answers.settings;

import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/** The stand with its boom; all of it, because a guess could tip. */
@Schema(description = "The stand and its boom, for what balances it. All figures are needed.")
public record Stand(
    @Schema(description = "Length of the boom from the column, in m", examples = "1.5")
        @NotNull
        @DecimalMin("0.1")
        @DecimalMax("5")
        Double boomM,
    @Schema(description = "Mass of the boom, in kg", examples = "0.8")
        @NotNull
        @DecimalMin("0")
        @DecimalMax("20")
        Double boomKg,
    @Schema(description = "Mass of stand and base on the column, in kg", examples = "4")
        @NotNull
        @DecimalMin("0")
        @DecimalMax("100")
        Double standKg,
    @Schema(description = "From the column to the edge of the foot, in m", examples = "0.35")
        @NotNull
        @DecimalMin("0.05")
        @DecimalMax("2")
        Double footEdgeM,
    @Schema(description = "From the column to the counterweight, in m", examples = "0.6")
        @NotNull
        @DecimalMin("0.05")
        @DecimalMax("3")
        Double counterArmM) {}
