package org.standoff.advice;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.fixture.MicrophoneBuilder.aCardioid;
import static org.standoff.fixture.MicrophoneBuilder.aMicrophone;
import static org.standoff.fixture.PlacementBuilder.aPlacement;
import static org.standoff.fixture.PreampBuilder.aPreamp;
import static org.standoff.fixture.QuestionBuilder.aQuestion;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.acoustics.AirJet;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Purpose;
import org.standoff.chain.Microphone;
import org.standoff.chain.Powering;
import org.standoff.chain.Transducer;

class AdviserTest {
  @Test
  void equalsShareARankAndTheNextOneIsCountedOn() {
    Advice advice =
        new Adviser(aQuestion().diffuse(85).build())
            .advise(
                List.of(
                    aCardioid(14, 12).called("t/b").build(),
                    aMicrophone().pattern(PatternName.OMNI, 14, 12).called("t/c").build(),
                    aCardioid(14, 12).called("t/a").build()));
    assertThat(advice.ranked())
        .extracting(r -> r.rank() + " " + r.assessment().microphone().id())
        .containsExactly("1 t/a", "1 t/b", "3 t/c");
  }

  @Test
  void whatClipsLosesToWhatDoesNotAndTellsByHowMuch() {
    Advice advice =
        new Adviser(aQuestion().diffuse(85).build())
            .advise(
                List.of(
                    aCardioid(2, 20).called("t/clips").bears(121).build(),
                    aMicrophone().pattern(PatternName.OMNI, 2, 12).called("t/bears").build()));
    assertThat(advice.ranked())
        .extracting(r -> r.assessment().microphone().id())
        .containsExactly("t/bears");
    Refusal refusal = advice.refused().get(0);
    assertThat(refusal.microphoneId()).isEqualTo("t/clips");
    assertThat(refusal.requirement()).isEqualTo("level");
    assertThat(refusal.figure()).isEqualTo("guarded_headroom_db");
    // 121 + 3.01 dB against a peak of 120 + 6 dB; a point source at 1 m adds 0.04 dB of rise
    assertThat(refusal.found().orElseThrow()).isCloseTo(-1.99, within(0.06));
    assertThat(refusal.because()).contains("the microphone clips", "95th", "cardioid");
  }

  @Test
  void whereEverythingClipsTheLargestMarginLeads() {
    Advice advice =
        new Adviser(aQuestion().build())
            .advise(
                List.of(
                    aCardioid(2, 12).called("t/worse").bears(115).build(),
                    aCardioid(2, 12).called("t/better").bears(118).build()));
    assertThat(advice.refused()).isEmpty();
    assertThat(advice.ranked())
        .extracting(r -> r.rank() + " " + r.assessment().microphone().id())
        .containsExactly("1 t/better", "2 t/worse");
    assertThat(advice.ranked().get(0).verdict(aQuestion().build().style()))
        .isEqualTo(Ranked.Verdict.CLIPS);
  }

  @Test
  void aMicrophoneWhoseBestPatternClipsIsSwitchedToOneThatDoesNot() {
    Microphone microphone =
        aMicrophone()
            .pattern(PatternName.OMNI, 2, 12)
            .pattern(PatternName.CARDIOID, 2, 12)
            .bears(126)
            .build();
    Question near =
        aQuestion(aPlacement().peak(0.05, 122, 6, 100).wantedFrom(100).build())
            .at(0.05)
            .diffuse(85)
            .build();
    Assessment chosen = new Adviser(near).advise(List.of(microphone)).ranked().get(0).assessment();
    assertThat(chosen.settings().pattern().name()).isEqualTo(PatternName.OMNI);
    assertThat(chosen.levels().clips()).isFalse();
  }

  @ParameterizedTest(name = "line {0}, banks of {1}, {2} mA: {3}")
  @CsvSource({
    "FREE, 4, 3, ",
    "ON, 4, 10, ",
    "OFF, 4, 3, phantom_v",
    "FREE, 0, 3, phantom_v",
    "ON, 4, 10.1, current_ma",
  })
  void whatNeedsPhantomGetsItOrIsRefused(
      LinePhantom line, int bankSize, double currentMa, String failing) {
    Microphone microphone =
        aCardioid(14, 12).powered(Powering.Need.P48, OptionalDouble.of(currentMa)).build();
    Advice advice =
        new Adviser(
                aQuestion().phantom(line).into(aPreamp().phantomBanksOf(bankSize).build()).build())
            .advise(List.of(microphone));
    if (failing == null) {
      assertThat(advice.refused()).isEmpty();
      assertThat(advice.ranked()).hasSize(1);
    } else {
      assertThat(advice.ranked()).isEmpty();
      assertThat(advice.refused())
          .extracting(Refusal::requirement, Refusal::figure)
          .containsExactly(tuple("phantom", failing));
    }
  }

  @ParameterizedTest(name = "never phantom on a line that is {0}: refused {1}")
  @CsvSource({"ON, true", "OFF, false", "FREE, false"})
  void whatPhantomMayDestroyIsRefusedOnlyWherePhantomIsOn(LinePhantom line, boolean refused) {
    Microphone ribbon =
        aMicrophone()
            .of(Transducer.PASSIVE_RIBBON)
            .powered(Powering.Need.NONE_AND_NEVER, OptionalDouble.empty())
            .passivePattern(PatternName.FIGURE_8, 1.5)
            .build();
    Advice advice = new Adviser(aQuestion().phantom(line).build()).advise(List.of(ribbon));
    assertThat(advice.refused().size()).isEqualTo(refused ? 1 : 0);
    if (refused) {
      assertThat(advice.refused().get(0).requirement()).isEqualTo("no-phantom");
      assertThat(advice.refused().get(0).found()).hasValue(48);
      assertThat(advice.refused().get(0).limit()).hasValue(0);
    }
  }

  @Test
  void aMovingCoilBearsPhantom() {
    Microphone coil =
        aMicrophone()
            .of(Transducer.MOVING_COIL)
            .powered(Powering.Need.NONE, OptionalDouble.empty())
            .passivePattern(PatternName.CARDIOID, 1.5)
            .build();
    assertThat(new Adviser(aQuestion().phantom(LinePhantom.ON).build()).advise(List.of(coil)))
        .satisfies(advice -> assertThat(advice.refused()).isEmpty());
  }

  @ParameterizedTest(name = "{0} in a {1} jet: refused {2}")
  @CsvSource({
    "PASSIVE_RIBBON, STRONG, true",
    "ACTIVE_RIBBON, STRONG, true",
    "PASSIVE_RIBBON, LIGHT, false",
    "MOVING_COIL, STRONG, false",
    "CONDENSER, STRONG, false",
  })
  void onlyRibbonsAreKeptOutOfAStrongJetOfAir(Transducer transducer, AirJet jet, boolean refused) {
    Microphone microphone =
        aMicrophone()
            .of(transducer)
            .powered(Powering.Need.NONE, OptionalDouble.empty())
            .passivePattern(PatternName.FIGURE_8, 1.5)
            .build();
    Advice advice =
        new Adviser(aQuestion(aPlacement().airJet(jet).build()).build())
            .advise(List.of(microphone));
    assertThat(advice.refused())
        .extracting(Refusal::requirement)
        .isEqualTo(refused ? List.of("air-jet") : List.of());
  }

  @Test
  void everyPreferenceOfTheScoreIsTold() {
    Adviser adviser =
        new Adviser(
            aQuestion(aPlacement().purpose(Purpose.ROOM).build()).at(0.5).diffuse(85).build());
    Ranked ranked = adviser.advise(List.of(aCardioid(14, 30).build())).ranked().get(0);
    List<Weighed> weighed = adviser.weighed(ranked.assessment());
    assertThat(weighed)
        .extracting(Weighed::preference)
        .containsExactly("isolation", "evenness", "headroom", "quiet");
    assertThat(weighed.stream().mapToDouble(Weighed::points).sum())
        .isCloseTo(ranked.score(), within(1e-9));
    assertThat(weighed.get(0).weight()).isEqualTo(-1);
    assertThat(ranked.assessment().levels().clips()).isFalse();
  }
}
