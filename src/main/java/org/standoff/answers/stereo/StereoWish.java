package org.standoff.answers.stereo;

import jakarta.validation.Valid;
import jakarta.validation.constraints.DecimalMax;
import jakarta.validation.constraints.DecimalMin;
import jakarta.validation.constraints.NotNull;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/** What a pair is to do. */
@Schema(description = "What the pair is to do")
public record StereoWish(
    @Schema(
            description =
                "Share of the loudspeaker base that the players fill: half the way from the"
                    + " rightmost to the leftmost image, in per cent",
            examples = "90")
        @NotNull
        @DecimalMin(value = "0", inclusive = false)
        @DecimalMax("100")
        Double fillPct,
    @Schema(
            description =
                "How far off it may be where nothing is left to turn, in per cent; 0.5 where left"
                    + " out",
            examples = "0.5")
        @DecimalMin("0")
        @DecimalMax("50")
        @Nullable Double fillWithinPct,
    @Schema(
            description =
                "What any player may lose in any octave in mono, in dB; any where left out",
            examples = "3")
        @DecimalMin("0")
        @DecimalMax("60")
        @Nullable Double monoLossAtMostDb,
    @Schema(
            description =
                "Mean direct sound over late field of all players, in dB; needs a room; any where"
                    + " left out")
        @Valid
        @Nullable LevelRange directToReverberantDb) {

  /** A range of levels. */
  @Schema(description = "A range in dB")
  public record LevelRange(
      @Schema(description = "Lowest, in dB", examples = "-3")
          @NotNull
          @DecimalMin("-60")
          @DecimalMax("60")
          Double least,
      @Schema(description = "Highest, in dB", examples = "3")
          @NotNull
          @DecimalMin("-60")
          @DecimalMax("60")
          Double most) {}
}
