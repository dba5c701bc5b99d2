package org.standoff.answers.settings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.fixture.MicrophoneBuilder.aMultiPattern;
import static org.standoff.fixture.PreampBuilder.aPreamp;
import static org.standoff.fixture.QuestionBuilder.aQuestion;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.standoff.advice.Question;
import org.standoff.chain.Microphone;

class SettingsCostTest {
  /** Three patterns and one pad. */
  private static final Microphone MICROPHONE = aMultiPattern().build();

  @Test
  void settingsCostTheirPatternsWithEveryCombinationOfPads() {
    Question plain = aQuestion().into(aPreamp().build()).build();
    Question padded = aQuestion().into(aPreamp().pad(20).build()).inLinePads(10.0, 20.0).build();
    assertThat(SettingsCost.ms(plain, List.of(MICROPHONE), 5))
        .isCloseTo(0.5 + 0.3 + 3 * (0.003 + 2 * 0.001), within(1e-9));
    assertThat(SettingsCost.ms(padded, List.of(MICROPHONE), 5))
        .isCloseTo(0.5 + 0.3 + 3 * (0.003 + 2 * 2 * 3 * 0.001), within(1e-9));
  }

  @Test
  void onlyThoseThatAreExplainedCostTheirExplanation() {
    Question question = aQuestion().into(aPreamp().build()).build();
    List<Microphone> many = Collections.nCopies(1_000, MICROPHONE);
    assertThat(SettingsCost.ms(question, many, 5)).isCloseTo(0.5 + 1.5 + 15, within(1e-6));
    assertThat(SettingsCost.ms(question, many, 50)).isCloseTo(0.5 + 15 + 15, within(1e-6));
  }
}
