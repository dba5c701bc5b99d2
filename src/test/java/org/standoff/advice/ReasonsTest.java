package org.standoff.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.standoff.fixture.MicrophoneBuilder.aCardioid;
import static org.standoff.fixture.MicrophoneBuilder.aMultiPattern;
import static org.standoff.fixture.PlacementBuilder.aPlacement;
import static org.standoff.fixture.QuestionBuilder.aQuestion;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.SourceSide;
import org.standoff.chain.Microphone;

/** The figures that the words must carry; the words themselves may change. */
class ReasonsTest {
  @Test
  void everySettingHasItsReasonWithTheFiguresBehindIt() {
    Map<String, Reason> reasons =
        reasons(
            aQuestion(aPlacement().peak(0.3, 134, 6, 112).wantedFrom(60).build())
                .at(0.3)
                .diffuse(85)
                .build(),
            aMultiPattern().build());
    assertThat(reasons.keySet())
        .containsExactlyInAnyOrder("pattern", "filter", "pad", "gain", "polarity");
    assertThat(reasons.get("pattern").value()).isEqualTo("cardioid");
    assertThat(reasons.get("pattern").because()).contains("4.8 dB", "60 Hz");
    assertThat(reasons.get("filter").value()).contains("40 Hz", "12 dB");
    // −10 lg(1 + (40/60)^4)
    assertThat(reasons.get("filter").because()).contains("1.0 dB", "60 Hz", "0.8 dB");
    assertThat(reasons.get("pad").value()).startsWith("10 dB");
    assertThat(reasons.get("pad").because()).contains("4.0 dB", "95");
    assertThat(reasons.get("gain").value()).endsWith(" dB");
    assertThat(reasons.get("gain").because()).contains("-10.0 dBFS");
    assertThat(reasons.get("polarity").value()).isEqualTo("normal");
  }

  @Test
  void whatIsFlatOrOutSaysWhy() {
    Question question = aQuestion(aPlacement().wantedFrom(30).build()).build();
    assertThat(reasons(question, aMultiPattern().build()).get("filter").because())
        .contains("1.0 dB", "30 Hz");
    Map<String, Reason> plain = reasons(question, aCardioid(2, 12).build());
    assertThat(plain.get("filter").value()).isEqualTo("out");
    assertThat(plain.get("filter").because()).contains("neither");
    assertThat(plain.get("pad").value()).isEqualTo("out");
    assertThat(plain.get("pattern").because()).contains("only");
  }

  @Test
  void wherePadsDoNotSufficeWhatIsLeftAndWhereIsSaid() {
    Question loud = aQuestion(aPlacement().peak(1, 138, 6, 118).build()).build();
    Reason pad = reasons(loud, aCardioid(1, 12).bears(139).build()).get("pad");
    // 139 + 3.01 − 138 − 6, less 0.03 dB of rise
    assertThat(pad.because()).contains("-2.0 dB", "electronics");
  }

  @Test
  void aGainOutOfReachSaysWhatWouldBeRight() {
    Question soft = aQuestion(aPlacement().peak(1, 60, 6, 40).build()).build();
    assertThat(reasons(soft, aCardioid(1, 12).build()).get("gain").because()).contains("60.0 dB");
  }

  @Test
  void theOtherSideOfAMovingPartIsInvertedForTrial() {
    Question under = aQuestion(aPlacement().side(SourceSide.OPPOSITE).build()).build();
    Reason polarity = reasons(under, aCardioid(14, 12).build()).get("polarity");
    assertThat(polarity.value()).isEqualTo("inverted");
    assertThat(polarity.because()).contains("common practice");
  }

  private static Map<String, Reason> reasons(Question question, Microphone microphone) {
    Assessment chosen =
        new Adviser(question).advise(List.of(microphone)).ranked().get(0).assessment();
    return Reasons.of(question, chosen).stream()
        .collect(Collectors.toMap(Reason::setting, Function.identity()));
  }
}
