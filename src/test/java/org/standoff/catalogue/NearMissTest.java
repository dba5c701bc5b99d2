package org.standoff.catalogue;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class NearMissTest {

  private static final List<String> KNOWN = List.of("distance_m", "gain_db", "pad_db");

  @Test
  void aSlipOfTheFingerFindsTheNameThatWasMeant() {
    assertThat(NearMiss.of("distnce_m", KNOWN)).contains("distance_m");
    assertThat(NearMiss.of("Gain_dB", KNOWN)).contains("gain_db");
    assertThat(NearMiss.of("distance_mm", KNOWN)).contains("distance_m");
    assertThat(NearMiss.of("fornt", List.of("front", "rear-wall"))).contains("front");
  }

  @Test
  void moreThanOneWrongLetterInThreeIsNoNearMiss() {
    assertThat(NearMiss.of("abc_db", KNOWN)).isEmpty();
    assertThat(NearMiss.of("temperature", KNOWN)).isEmpty();
  }

  @Test
  void equallyNearNamesAreGivenInOrder() {
    assertThat(NearMiss.of("xb", List.of("zb", "ab"))).contains("ab");
  }

  @Test
  void anEndlessNameIsNotCompared() {
    assertThat(NearMiss.of("distance_m".repeat(20), List.of("distance_m".repeat(20)))).isEmpty();
  }
}
