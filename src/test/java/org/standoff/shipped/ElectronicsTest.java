package org.standoff.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.standoff.chain.ThermalNoise;

/** Laws over the shipped preamps and direct boxes. */
class ElectronicsTest {
  private static final List<ShippedFile> PREAMPS = ShippedCatalogue.ofKind("preamp");
  private static final List<ShippedFile> DIRECT_BOXES = ShippedCatalogue.ofKind("direct-box");
  private static final double WHOLE_STEPS_SLACK = 1e-9;

  @Test
  void gainRunsFromTheLeastToTheMostInWholeSteps() {
    assertThat(PREAMPS)
        .as("gain: most_db - least_db is a whole number of step_db")
        .isNotEmpty()
        .allMatch(file -> steps(file) >= 1)
        .allMatch(file -> Math.abs(steps(file) - Math.rint(steps(file))) < WHOLE_STEPS_SLACK);
  }

  @Test
  void inputNoiseContainsTheThermalNoiseOfItsSource() {
    assertThat(PREAMPS)
        .as("an ein_dbu below the thermal noise of source_ohm can't be: correct either")
        .allMatch(
            file ->
                file.each("/noise/at").stream()
                    .allMatch(
                        at ->
                            at.get("ein_dbu").doubleValue()
                                > ThermalNoise.dbu(file.number("/noise/source_ohm"))));
  }

  @Test
  void inputNoiseFallsAsTheGainRisesInsideTheRange() {
    assertThat(PREAMPS)
        .as("order noise.at by gain_db, inside the gain range, ein_dbu falling")
        .allMatch(ElectronicsTest::noiseIsInOrder);
  }

  @Test
  void theOutputReachesFullScale() {
    assertThat(PREAMPS)
        .as("full_scale_dbu above maximum_output_dbu: the converter could never be filled")
        .allMatch(file -> file.number("/maximum_output_dbu") >= file.number("/full_scale_dbu"));
  }

  @Test
  void coreShowsWherePreampsDiffer() {
    List<ShippedFile> core = PREAMPS.stream().filter(file -> file.pack().equals("core")).toList();
    assertThat(core).extracting(file -> file.number("/full_scale_dbu")).doesNotHaveDuplicates();
    assertThat(core).extracting(file -> file.number("/phantom/bank_size")).contains(1.0, 4.0, 8.0);
    assertThat(core).extracting(file -> file.number("/gain/step_db")).contains(1.0, 3.0);
    assertThat(core).extracting(file -> file.content().has("pads_db")).contains(true, false);
  }

  @Test
  void phantomBanksDivideTheInputs() {
    assertThat(PREAMPS)
        .as("bank_size divides inputs")
        .allMatch(
            file -> file.number("/inputs") % Math.max(1, file.number("/phantom/bank_size")) == 0);
  }

  @Test
  void anActiveDirectBoxIsPoweredAndAPassiveOneIsNot() {
    assertThat(DIRECT_BOXES)
        .as("active: true needs p48 on its line, active: false needs none")
        .isNotEmpty()
        .allMatch(
            file ->
                file.at("/active").booleanValue()
                    == file.at("/powering/need").asText().equals("p48"));
  }

  private static double steps(ShippedFile file) {
    return (file.number("/gain/most_db") - file.number("/gain/least_db"))
        / file.number("/gain/step_db");
  }

  private static boolean noiseIsInOrder(ShippedFile file) {
    JsonNode before = null;
    for (JsonNode at : file.each("/noise/at")) {
      double gainDb = at.get("gain_db").doubleValue();
      boolean inRange =
          gainDb >= file.number("/gain/least_db") && gainDb <= file.number("/gain/most_db");
      boolean inOrder =
          before == null
              || (gainDb > before.get("gain_db").doubleValue()
                  && at.get("ein_dbu").doubleValue() < before.get("ein_dbu").doubleValue());
      if (!inRange || !inOrder) {
        return false;
      }
      before = at;
    }
    return true;
  }
}
