package org.standoff.pairs.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.fixture.ShippedPairs.layout;
import static org.standoff.fixture.ShippedPairs.layouts;
import static org.standoff.fixture.ShippedPairs.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Box;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Point3;
import org.standoff.acoustics.Polar;
import org.standoff.acoustics.Room;
import org.standoff.pairs.PairHearing;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.Parameter;
import org.standoff.pairs.ParameterRange;
import org.standoff.pairs.SoundOrigin;
import org.standoff.pairs.StereoDifferences;
import org.standoff.pairs.listening.ListeningModel;

/** Three horns in a line 3 m wide; the pair looks east at them from 2.5 m, 2 m up. */
class PairFitTest {
  private static final List<PicturedPlayer> HORNS =
      List.of(
          new PicturedPlayer("trumpet", new Point3(11.6, 5.2, 1.5)),
          new PicturedPlayer("alto", new Point3(11.6, 6.7, 1.1)),
          new PicturedPlayer("trombone", new Point3(11.6, 8.2, 1.4)));
  private static final List<PicturedPlayer> DRUMS =
      List.of(new PicturedPlayer("drums", new Point3(2.5, 4.5, 0.8)));
  private static final Stand FIXED = stand(ParameterRange.fixed(2.5));
  private static final List<ListeningModel> STRAIGHT_FIRST =
      List.of(
          model("straight-trade"),
          model("two-region"),
          model("linear-factors"),
          model("simonsen-points"),
          model("limit-polyline"));

  @Test
  void theLongBarTakesFortyCentimetresAtHundredAndTwenty() {
    FitAnswer answer = ask(layout("spaced-directional"), 0.6, Wish.fill(95.5));
    FitSolution angleSolved =
        answer.solutions().stream()
            .filter(one -> one.pattern() == PatternName.CARDIOID)
            .filter(one -> one.measures().get(Parameter.SPACING) == 0.40)
            .findFirst()
            .orElseThrow();
    assertThat(angleSolved.measures().get(Parameter.ANGLE)).isCloseTo(120, within(3.0));
    assertThat(angleSolved.fillPct()).isCloseTo(95.5, within(1e-5));
    assertThat(imagePct(angleSolved, 0)).isCloseTo(-95.5, within(1.5));
    assertThat(imagePct(angleSolved, 1)).isCloseTo(0, within(1e-6));
    assertThat(imagePct(angleSolved, 2)).isCloseTo(95.5, within(1.5));
  }

  @Test
  void theShortBarCannotFillTheBaseWithCardioids() {
    FitAnswer answer = ask(layout("near-coincident"), 0.2, Wish.fill(95));
    assertThat(answer.solutions()).noneMatch(one -> one.pattern() == PatternName.CARDIOID);
    WhyNot.SpanOutOfReach reason =
        answer.whyNot().stream()
            .filter(WhyNot.SpanOutOfReach.class::isInstance)
            .map(WhyNot.SpanOutOfReach.class::cast)
            .filter(span -> span.pattern() == PatternName.CARDIOID)
            .findFirst()
            .orElseThrow();
    assertThat(reason.reachedPct()).isCloseTo(71, within(2.0));
    assertThat(reason.nearest().get(Parameter.SPACING)).isEqualTo(0.2);
    assertThat(reason.nearest().get(Parameter.ANGLE)).isEqualTo(130);
    assertThat(reason.code()).isEqualTo("span-out-of-reach");
    assertThat(reason.detail()).contains("cardioid").contains("95.0 %");
  }

  @Test
  void crossedFigureEightsTurnAReversedRearToTheDrums() {
    Stand roaming = stand(new ParameterRange(1.5, 2.5, 4));
    FitAnswer answer =
        PairFit.answer(question(List.of(layout("crossed-figure-8s")), roaming, 0.2, Wish.fill(79)));
    FitSolution solution = answer.solutions().get(0);
    assertThat(solution.distanceM()).isBetween(2.3, 2.6);
    assertThat(solution.givesUp())
        .anySatisfy(
            cost -> {
              assertThat(cost.code()).isEqualTo("inverted-polarity");
              assertThat(cost.detail()).contains("drums");
            });
  }

  @Test
  void everySolutionReturnsTheWishWhenAskedForItsGeometry() {
    for (double fillPct : new double[] {30, 55, 80, 100}) {
      FitAnswer answer =
          PairFit.answer(
              question(layouts(), stand(new ParameterRange(1, 2.5, 5)), 3, Wish.fill(fillPct)));
      assertThat(answer.solutions()).hasSizeGreaterThan(10);
      for (FitSolution solution : answer.solutions()) {
        assertThat(filledPct(solution)).isCloseTo(fillPct, within(0.5));
        for (Parameter parameter : Parameter.all()) {
          double value = solution.measures().get(parameter);
          assertThat(solution.layout().range(parameter).contains(value)).isTrue();
        }
        assertThat(solution.distanceM()).isBetween(1.0, 5.0);
      }
    }
  }

  @Test
  void measuresBelongToTheTrueDistance() {
    Wish wish = Wish.fill(70);
    PairLayout omnis = layout("spaced-omnis");
    double nearM = spacingAt(omnis, 2, wish);
    double farM = spacingAt(omnis, 4, wish);
    assertThat(farM).isGreaterThan(1.3 * nearM);
  }

  @Test
  void ranksRiseAndEqualsShareOne() {
    List<FitSolution> solutions = ask(layouts(), 3, Wish.fill(60)).solutions();
    assertThat(solutions.get(0).rank()).isEqualTo(1);
    for (int at = 1; at < solutions.size(); at++) {
      FitSolution before = solutions.get(at - 1);
      FitSolution here = solutions.get(at);
      assertThat(here.penalty()).isGreaterThanOrEqualTo(before.penalty());
      boolean equal = here.penalty() - before.penalty() < 1e-6;
      assertThat(here.rank()).isEqualTo(equal ? before.rank() : at + 1);
    }
  }

  /** Nothing of crossed figure-8s can be turned: near the wish they are taken as they are. */
  @Test
  void whatCannotBeTurnedIsTakenWithinTheToleranceAndTellsItsMiss() {
    PairLayout eights = layout("crossed-figure-8s");
    double reachedPct =
        ((WhyNot.SpanOutOfReach) ask(eights, 1, Wish.fill(50)).whyNot().get(0)).reachedPct();
    FitSolution near = ask(eights, 1, Wish.fill(reachedPct + 0.4)).solutions().get(0);
    assertThat(near.fillPct()).isCloseTo(reachedPct, within(1e-12));
    assertThat(near.penalty() - ask(eights, 1, Wish.fill(reachedPct)).solutions().get(0).penalty())
        .isBetween(0.3, 0.6);
    assertThat(ask(eights, 1, Wish.fill(reachedPct + 0.6)).solutions()).isEmpty();
    Wish wide = new Wish(reachedPct - 5, 6, OptionalDouble.empty(), Optional.empty());
    assertThat(ask(eights, 1, wide).solutions()).hasSize(1);
  }

  @Test
  void theSameQuestionHasTheSameAnswer() {
    FitQuestion question = question(layouts(), FIXED, 3, Wish.fill(60));
    assertThat(PairFit.answer(question)).isEqualTo(PairFit.answer(question));
  }

  @Test
  void aLayoutWithoutMicrophonesSaysHowManyItNeeds() {
    AtHand one = atHand("solo", 1, true, PatternName.OMNI);
    FitAnswer answer =
        PairFit.answer(withMicrophones(List.of(layout("three-omni-tree")), List.of(one)));
    assertThat(answer.solutions()).isEmpty();
    assertThat(answer.whyNot())
        .containsExactly(new WhyNot.NoMicrophones("core/three-omni-tree", 3));
  }

  @Test
  void midAndSideTakeABodyOrTwoMicrophones() {
    PairLayout midSide = layout("mid-side");
    AtHand body =
        new AtHand(
            "body",
            List.of(new PatternChoice(PatternName.CARDIOID, PatternName.CARDIOID.ideal())),
            true,
            1,
            false,
            Polar.DEFAULT_REJECTION_CAP_DB);
    AtHand cardioid = atHand("front", 1, false, PatternName.CARDIOID);
    AtHand eight = atHand("eight", 1, false, PatternName.FIGURE_8);
    assertThat(PairFit.answer(withMicrophones(List.of(midSide), List.of(cardioid))).solutions())
        .isEmpty();
    FitSolution solution =
        PairFit.answer(withMicrophones(List.of(midSide), List.of(cardioid, eight, body)))
            .solutions()
            .get(0);
    assertThat(solution.sets())
        .containsExactlyInAnyOrder(
            new MicrophoneSet(List.of("front", "eight"), true),
            new MicrophoneSet(List.of("body"), true));
    assertThat(solution.measures().get(Parameter.SIDE_GAIN)).isBetween(0.2, 1.6);
  }

  @Test
  void matchedMicrophonesComeFirstAndSinglesCost() {
    AtHand singles = atHand("singles", 2, false, PatternName.CARDIOID);
    AtHand matched = atHand("matched", 2, true, PatternName.CARDIOID);
    PairLayout layout = layout("near-coincident");
    FitSolution both =
        PairFit.answer(withMicrophones(List.of(layout), List.of(singles, matched)))
            .solutions()
            .get(0);
    FitSolution only =
        PairFit.answer(withMicrophones(List.of(layout), List.of(singles))).solutions().get(0);
    assertThat(both.sets().get(0).microphoneIds()).containsExactly("matched", "matched");
    assertThat(only.givesUp()).extracting(GivesUp::code).contains("unmatched");
    assertThat(only.penalty() - both.penalty()).isCloseTo(5, within(1e-9));
  }

  @Test
  void aBarShorterThanTheLayoutIsTheReason() {
    FitAnswer answer = ask(layout("spaced-directional"), 0.2, Wish.fill(90));
    assertThat(answer.whyNot())
        .containsExactly(new WhyNot.BarTooShort("core/spaced-directional", 0.30, 0.2));
    assertThat(answer.whyNot().get(0).detail()).contains("0.30 m").contains("0.20 m");
  }

  @Test
  void playersBehindThePairAreTheReason() {
    Stand turned = new Stand(new Point3(11.6, 6.7, 0), 90, ParameterRange.fixed(2.5), 2, 0);
    Stand passed = new Stand(new Point3(20, 6.7, 0), -90, ParameterRange.fixed(2.5), 2, 0);
    PairLayout layout = layout("near-coincident");
    assertThat(PairFit.answer(question(List.of(layout), passed, 1, Wish.fill(50))).whyNot())
        .containsExactly(new WhyNot.AllBehind("core/near-coincident", 3));
    assertThat(PairFit.answer(question(List.of(layout), turned, 1, Wish.fill(50))).solutions())
        .isNotEmpty();
  }

  @Test
  void monoThatMustSurviveRulesSpacedOmnisOut() {
    Wish wish = new Wish(80, 0.5, OptionalDouble.of(2), Optional.empty());
    FitAnswer answer = ask(List.of(layout("spaced-omnis"), layout("mid-side")), 3, wish);
    assertThat(answer.whyNot())
        .anySatisfy(
            reason -> {
              assertThat(reason).isInstanceOf(WhyNot.MonoLoss.class);
              assertThat(((WhyNot.MonoLoss) reason).lossDb()).isGreaterThan(2);
              assertThat(reason.layoutId()).isEqualTo("core/spaced-omnis");
            });
    assertThat(answer.solutions())
        .allSatisfy(
            solution ->
                assertThat(Portrait.worstInMono(solution.players()).monoLossDb())
                    .isLessThanOrEqualTo(2));
  }

  @Test
  void theWishForRoomMovesTheStand() {
    Room room = new Room(655, 474, Octaves.filled(70), new Box(14, 9, 5.2), Air.at(21), 28);
    Wish wish = new Wish(60, 0.5, OptionalDouble.empty(), Optional.of(new Wish.Window(-4, -2)));
    Stand roaming = stand(new ParameterRange(1, 4, 5));
    FitQuestion question =
        new FitQuestion(
            HORNS,
            DRUMS,
            roaming,
            3,
            layouts(),
            List.of(AtHand.ideal()),
            wish,
            STRAIGHT_FIRST,
            Optional.of(room),
            Air.at(21));
    FitAnswer answer = PairFit.answer(question);
    assertThat(answer.solutions()).isNotEmpty();
    assertThat(answer.solutions())
        .allSatisfy(
            one -> assertThat(one.directToReverberantDb().orElseThrow()).isBetween(-4.0, -2.0));
    Wish dry = new Wish(60, 0.5, OptionalDouble.empty(), Optional.of(new Wish.Window(20, 30)));
    FitQuestion hopeless =
        new FitQuestion(
            HORNS,
            DRUMS,
            roaming,
            3,
            List.of(layout("spaced-omnis")),
            List.of(AtHand.ideal()),
            dry,
            STRAIGHT_FIRST,
            Optional.of(room),
            Air.at(21));
    assertThat(PairFit.answer(hopeless).whyNot())
        .isNotEmpty()
        .allSatisfy(reason -> assertThat(reason.code()).isEqualTo("room-out-of-range"));
  }

  @Test
  void aPlayerInThePlaceOfACapsuleIsTheReason() {
    List<PicturedPlayer> players =
        List.of(
            new PicturedPlayer("left", new Point3(-0.3, 3, 2)),
            new PicturedPlayer("on", new Point3(0, 1.5, 2)),
            new PicturedPlayer("right", new Point3(0.3, 3, 2)));
    Stand stand = new Stand(new Point3(0, 1, 0), 0, ParameterRange.fixed(1), 2, 0);
    FitAnswer answer =
        PairFit.answer(
            new FitQuestion(
                players,
                List.of(),
                stand,
                3,
                List.of(layout("three-omni-tree")),
                List.of(AtHand.ideal()),
                Wish.fill(40),
                STRAIGHT_FIRST,
                Optional.empty(),
                Air.STANDARD));
    assertThat(answer.solutions()).isEmpty();
    assertThat(answer.whyNot())
        .isNotEmpty()
        .allSatisfy(reason -> assertThat(reason.code()).isEqualTo("player-on-capsule"));
  }

  @Test
  void sixtyMicrophonesOfOnePatternAreSolvedOnce() {
    List<AtHand> sixty = new ArrayList<>();
    for (int at = 0; at < 60; at++) {
      sixty.add(atHand("model-" + at, 2, at % 2 == 0, PatternName.CARDIOID));
    }
    FitAnswer answer = PairFit.answer(withMicrophones(List.of(layout("near-coincident")), sixty));
    assertThat(answer.solutions()).hasSize(2);
    assertThat(answer.solutions().get(0).sets()).hasSize(60);
    assertThat(answer.solutions().get(0).sets().get(59).matched()).isFalse();
  }

  @Test
  void aQuestionWithoutAnAnswerIsRefused() {
    assertThatThrownBy(() -> Wish.fill(Double.NaN)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Wish.fill(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new PicturedPlayer("x", new Point3(0, Double.NaN, 0)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("x");
    assertThatThrownBy(() -> PicturedPlayer.line(3, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> stand(ParameterRange.fixed(0)))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () ->
                new FitQuestion(
                    HORNS,
                    DRUMS,
                    FIXED,
                    1,
                    layouts(),
                    List.of(),
                    Wish.fill(50),
                    List.of(model("limit-polyline")),
                    Optional.empty(),
                    Air.STANDARD))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("place images");
  }

  @Test
  void aLineIsSpreadEvenly() {
    List<PicturedPlayer> line = PicturedPlayer.line(3, 3);
    assertThat(line).extracting(player -> player.position().xM()).containsExactly(-1.5, 0.0, 1.5);
  }

  private static double filledPct(FitSolution solution) {
    PairHearing hearing = PairHearing.of(solution.pair(), Air.at(21));
    double[] images =
        HORNS.stream()
            .mapToDouble(
                player -> {
                  StereoDifferences heard =
                      hearing.differences(new SoundOrigin.InRoom(player.position()));
                  return STRAIGHT_FIRST
                      .get(0)
                      .imagePct(heard.levelDb(), heard.timeMs())
                      .orElseThrow();
                })
            .sorted()
            .toArray();
    return (images[images.length - 1] - images[0]) / 2;
  }

  private static double spacingAt(PairLayout layout, double distanceM, Wish wish) {
    return PairFit.answer(
            question(List.of(layout), stand(ParameterRange.fixed(distanceM)), 3, wish))
        .solutions()
        .get(0)
        .measures()
        .get(Parameter.SPACING);
  }

  private static double imagePct(FitSolution solution, int player) {
    return solution.players().get(player).images().images().get(0).positionPct();
  }

  private static FitAnswer ask(PairLayout layout, double barMostM, Wish wish) {
    return ask(List.of(layout), barMostM, wish);
  }

  private static FitAnswer ask(List<PairLayout> layouts, double barMostM, Wish wish) {
    return PairFit.answer(question(layouts, FIXED, barMostM, wish));
  }

  private static FitQuestion withMicrophones(List<PairLayout> layouts, List<AtHand> atHand) {
    return new FitQuestion(
        HORNS,
        DRUMS,
        FIXED,
        3,
        layouts,
        atHand,
        Wish.fill(60),
        STRAIGHT_FIRST,
        Optional.empty(),
        Air.at(21));
  }

  private static FitQuestion question(
      List<PairLayout> layouts, Stand stand, double barMostM, Wish wish) {
    return new FitQuestion(
        HORNS,
        DRUMS,
        stand,
        barMostM,
        layouts,
        List.of(AtHand.ideal()),
        wish,
        STRAIGHT_FIRST,
        Optional.empty(),
        Air.at(21));
  }

  private static AtHand atHand(String id, int count, boolean matched, PatternName pattern) {
    return new AtHand(
        id,
        List.of(new PatternChoice(pattern, pattern.ideal())),
        false,
        count,
        matched,
        Polar.DEFAULT_REJECTION_CAP_DB);
  }

  private static Stand stand(ParameterRange distanceM) {
    return new Stand(new Point3(11.6, 6.7, 0), -90, distanceM, 2, 0);
  }
}
