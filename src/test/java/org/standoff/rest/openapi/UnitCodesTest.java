package org.standoff.rest.openapi;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class UnitCodesTest {

  /**
   * Units of the UCUM (2.1, tables 1 to 20), with the prefixes and powers that are used here. B and
   * B[SPL] are special units: they take prefixes, and stand in no product or quotient (§21).
   */
  private static final Set<String> UCUM =
      Set.of(
          "m", "mm", "m2", "m3", "kg", "deg", "Hz", "s", "ms", "min", "h", "d", "Cel", "Pa", "%",
          "m/s", "dB", "dB[SPL]", "By", "1");

  private final UnitCodes codes = new UnitCodes();

  @Test
  void theLongestEndOfANameCounts() {
    assertThat(codes.of("", "distance_m")).hasValue("m");
    assertThat(codes.of("", "level_db")).hasValue("dB");
    assertThat(codes.of("", "level_db_spl")).hasValue("dB[SPL]");
    assertThat(codes.of("", "maximum_spl_db")).hasValue("dB[SPL]");
    assertThat(codes.of("", "speed_of_sound_m_per_s")).hasValue("m/s");
  }

  @Test
  void aRecordsOwnWordCountsBeforeTheName() {
    assertThat(codes.of("Refusal", "limit")).isEmpty();
    assertThat(codes.of("SettingsQuestion", "limit")).hasValue("1");
  }

  @Test
  void aNumberOfWhichNothingIsKnownEndsTheBuild() {
    assertThatThrownBy(() -> codes.of("Chosen", "warmth"))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("warmth of Chosen");
  }

  @Test
  void whatIsNoNumberHasAUnitByTheEndOfItsNameAlone() {
    assertThat(codes.ofMeasure("AtCapsule", "peak_db_spl")).hasValue("dB[SPL]{peak}");
    assertThat(codes.ofMeasure("House", "hours")).isEmpty();
  }

  @Test
  void everyCodeIsOneOfTheStandardWithAnAnnotationAtMost() {
    Set<String> units =
        PropertiesFile.read(UnitCodes.RESOURCE).values().stream()
            .map(code -> code.toString().replaceFirst("\\{[!-z|~]+}$", ""))
            .filter(unit -> !unit.isEmpty())
            .collect(Collectors.toSet());
    assertThat(units).isSubsetOf(UCUM).contains("dB[SPL]");
  }
}
