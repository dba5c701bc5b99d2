package org.standoff.answers.floor;

import com.fasterxml.jackson.annotation.JsonProperty;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.standoff.acoustics.PatternName;
import org.standoff.answers.Basis;

/**
 * The answer to a {@link RoomQuestion}.
 *
 * @param room id of the room
 * @param volumeM3 its volume
 * @param surfaceM2 its boundaries
 * @param midAbsorptionAreaM2 mean of 500 Hz and 1 kHz
 * @param schroederHz below it single modes rule
 * @param decays per octave
 * @param criticalDistances per pattern on its axis, for a source that radiates alike to all sides
 * @param linings what material would buy
 * @param basis what the answer rests on
 */
public record RoomAnswer(
    String room,
    @JsonProperty("volume_m3") double volumeM3,
    @JsonProperty("surface_m2") double surfaceM2,
    @JsonProperty("mid_absorption_area_m2") double midAbsorptionAreaM2,
    double schroederHz,
    List<DecayLine> decays,
    List<CriticalDistanceLine> criticalDistances,
    List<LiningLine> linings,
    Basis basis) {

  /** Decay times of one octave, on the room's data as they stand and with 4mV of the air added. */
  public record DecayLine(
      String octave,
      @JsonProperty("absorption_area_m2") double absorptionAreaM2,
      double meanAbsorption,
      double sabineS,
      OptionalDouble eyringS,
      double sabineWithAirS,
      OptionalDouble eyringWithAirS) {}

  /** Where direct sound and the classical reverberant field are equal. */
  public record CriticalDistanceLine(
      PatternName pattern, double midM, Map<String, Double> perOctaveM) {}

  /** What an area of a material would buy. */
  public record LiningLine(
      String title,
      @JsonProperty("area_m2") double areaM2,
      OptionalDouble lateChangeDb,
      Map<String, Double> lateChangePerOctaveDb,
      double decayS,
      double criticalDistanceM) {}
}
