package org.standoff.catalogue.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Placement;
import org.standoff.acoustics.Room;
import org.standoff.acoustics.SourceSide;
import org.standoff.acoustics.Spectrum;
import org.standoff.catalogue.Sheet;
import org.standoff.chain.Basis;
import org.standoff.chain.Microphone;
import org.standoff.chain.PatternFigures;
import org.standoff.chain.Preamp;

/** What the records say where a file says nothing, and how figures become others. */
class ReadersTest {

  private static final String MICROPHONE =
      """
      title: m
      transducer: electret
      address: boundary
      powering: { need: p48, current_ma: 2 }
      source_impedance_ohm: 140
      maximum_spl: { level_db_spl: 131 }
      outputs:
        - id: main
          patterns:
            - { pattern: half-omni, sensitivity_mv_per_pa: 11, self_noise_dba: 23 }
            - pattern: cardioid
              omni_part: 0.55
              omni_part_per_octave: { "125": 0.7, "1k": 0.55, "8k": 0.4 }
              sensitivity_mv_per_pa: 11
              self_noise_dba: 23
      basis: %s
      """;

  @Test
  void aMaximumThatIsStatedIsSureAndOneThatIsAssumedIsNot() {
    assertThat(microphone("stated").maximumSpl().spreadDb()).isZero();
    assertThat(microphone("measured").maximumSpl().spreadDb()).isZero();
    assertThat(microphone("assumed").maximumSpl().spreadDb()).isEqualTo(3);
  }

  @Test
  void theBasisOfOneFigureGoesBeforeThatOfTheSheet() {
    Microphone microphone = microphone("stated\nbasis_of: { maximum_spl: assumed }");
    assertThat(microphone.maximumSpl().basis()).isEqualTo(Basis.ASSUMED);
    assertThat(microphone.maximumSpl().spreadDb()).isEqualTo(3);
    assertThat(microphone("assumed\nmaximum_spl_spread_db: 1.5").maximumSpl().spreadDb())
        .isEqualTo(1.5);
  }

  @Test
  void aPatternWithoutACoefficientHasThatOfItsWord() {
    PatternFigures halfOmni = microphone("stated").outputs().get(0).patterns().get(0);
    assertThat(halfOmni.polar().omniPart()).isEqualTo(1);
    assertThat(halfOmni.polar().halfSpace()).isTrue();
    PatternFigures cardioid = microphone("stated").outputs().get(0).patterns().get(1);
    assertThat(cardioid.polar().omniPart()).isEqualTo(0.55);
  }

  @Test
  void anOctaveThatIsNotGivenTakesTheNearestAndTheLowerOfTwo() {
    var perOctave =
        microphone("stated").outputs().get(0).patterns().get(1).omniPartPerOctave().orElseThrow();
    assertThat(perOctave.toArray())
        .containsExactly(0.7, 0.7, 0.7, 0.7, 0.55, 0.55, 0.55, 0.4, 0.4, 0.4);
  }

  @Test
  void aDeeperRejectionThanRealCapsulesKeepIsNotBelieved() {
    assertThat(microphone("stated").rejectionCapDb()).isEqualTo(20);
    assertThat(microphone("stated\nrejection_cap_db: 25").rejectionCapDb()).isEqualTo(25);
  }

  @Test
  void surfacesAndFurtherAreasAddUpInEachOctave() {
    Room room =
        RoomReader.read(
            sheet(
                """
                box: { length_m: 10, width_m: 8, height_m: 5 }
                surfaces:
                  - { name: floor, area_m2: 80, absorption: { "125": 0.1, "1k": 0.05 } }
                  - { name: rest, area_m2: 260, absorption: { "500": 0.2 } }
                absorption_area_m2: { "125": 3 }
                air: { temperature_c: 22, relative_humidity_percent: 40 }
                background_noise_dba: 24
                """));
    assertThat(room.volumeM3()).isEqualTo(400);
    assertThat(room.surfaceM2()).isEqualTo(340);
    assertThat(room.absorptionAreaM2(Octave.HZ_125, false)).isCloseTo(63, within(1e-9));
    assertThat(room.absorptionAreaM2(Octave.HZ_1K, false)).isCloseTo(59, within(1e-9));
    assertThat(room.air().temperatureC()).isEqualTo(22);
  }

  @Test
  void aMeasuredDecayGoesBeforeTheSurfaces() {
    Room room =
        RoomReader.read(
            sheet(
                """
                box: { length_m: 10, width_m: 8, height_m: 5 }
                volume_m3: 380
                surfaces: [ { name: all, area_m2: 340, absorption: { "500": 0.9 } } ]
                decay_s: { "500": 0.7 }
                air: { temperature_c: 20 }
                background_noise_dba: 24
                """));
    assertThat(room.volumeM3()).isEqualTo(380);
    assertThat(room.sabineS(Octave.HZ_500)).isCloseTo(0.7, within(1e-9));
  }

  @Test
  void aPreampWithoutPhantomHasNoBank() {
    String preamp =
        """
        title: p
        inputs: 2
        gain: { least_db: 3, most_db: 51, step_db: 3 }
        maximum_input_dbu: 9
        maximum_output_dbu: 21
        noise: { source_ohm: 150, at: [ { gain_db: 51, ein_dbu: -127 } ] }
        high_passes: [ { corner_hz: 80, slope_db_per_octave: 18 } ]
        phantom: { available: %s, bank_size: 4 }
        full_scale_dbu: 20
        """;
    Preamp without = PreampReader.read("inline", sheet(preamp.formatted("false")));
    assertThat(without.phantomAvailable()).isFalse();
    assertThat(without.highPasses().get(0).order()).isEqualTo(3);
    assertThat(PreampReader.read("inline", sheet(preamp.formatted("true"))).phantomBankSize())
        .isEqualTo(4);
  }

  @Test
  void aPlacementReadsItsPercentilesItsSpectrumAndItsSilences() {
    Placement placement =
        SourceReader.read(
                "inline",
                sheet(
                    """
                    title: s
                    kind: instrument
                    placements:
                      spot:
                        title: Spot
                        purpose: body
                        radiator: { type: piston, radius_m: 0.2 }
                        level:
                          at_m: 0.3
                          peak_db_spl: { low: 112, typical: 118, high: 125 }
                          long_term_db_spl: 99
                        spectrum: { octaves_db: { "250": 80, "500": 83 }, lowest_hz: 200, highest_hz: 600 }
                        directivity_db: { "125": 0, "500": 1, "2k": 3, "8k": 6 }
                        wanted_from_hz: 90
                        companion: { purpose: weight, wanted_from_hz: 150 }
                        distance_m: { least: 0.1, most: 0.5 }
                        basis: invented for this test
                    """))
            .placements()
            .get("spot");
    assertThat(placement.level().peak().typicalDb()).isEqualTo(118);
    assertThat(placement.level().peak().spreadDb()).isEqualTo(6.5);
    assertThat(placement.side()).isEqualTo(SourceSide.REFERENCE);
    assertThat(placement.radiator().radiusM()).isEqualTo(0.2);
    assertThat(placement.companion().orElseThrow().wantedFromHz()).isEqualTo(150);
    Spectrum spectrum = placement.spectrum().orElseThrow();
    // 3 dB apart: one third and two thirds, within the rounding of 10 lg 2
    assertThat(spectrum.powerShares().get(Octave.HZ_250)).isCloseTo(1 / 3.0, within(0.001));
    assertThat(spectrum.powerShares().get(Octave.HZ_500)).isCloseTo(2 / 3.0, within(0.001));
    assertThat(spectrum.powerShares().get(Octave.HZ_1K)).isZero();
  }

  private static Microphone microphone(String basis) {
    return MicrophoneReader.read("inline", sheet(MICROPHONE.formatted(basis)));
  }

  private static Sheet sheet(String yaml) {
    try {
      return new Sheet(new YAMLMapper().readTree(yaml));
    } catch (JsonProcessingException malformed) {
      throw new IllegalArgumentException(malformed);
    }
  }
}
