package org.standoff.answers.stereo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.fixture.ShippedPairs.layout;
import static org.standoff.fixture.ShippedPairs.model;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Point3;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.ParameterRange;
import org.standoff.pairs.fit.AtHand;
import org.standoff.pairs.fit.FitQuestion;
import org.standoff.pairs.fit.PicturedPlayer;
import org.standoff.pairs.fit.Stand;
import org.standoff.pairs.fit.Wish;

class StereoCostTest {
  @Test
  void aGeometryCostsItsSourcesAndWhatEachModelMakesOfThem() {
    assertThat(GeometryCost.ms(0, 5)).isCloseTo(0.5, within(1e-9));
    assertThat(GeometryCost.ms(100, 5)).isCloseTo(0.5 + 2 + 6, within(1e-9));
  }

  @Test
  void aFitCostsItsPlayersInEachLayoutInEachPatternThatTheLayoutTakes() {
    // four patterns of the first, three of the second, by three players
    assertThat(FitCost.ms(fit(List.of(layout("near-coincident")), AtHand.ideal())))
        .isCloseTo(2 + 1.2, within(1e-9));
    assertThat(
            FitCost.ms(
                fit(List.of(layout("near-coincident"), layout("spaced-omnis")), AtHand.ideal())))
        .isCloseTo(2 + 2.1, within(1e-9));
  }

  @Test
  void whatIsAlikeIsSolvedOnceAndCostsOnce() {
    assertThat(FitCost.ms(fit(List.of(layout("near-coincident")), AtHand.ideal(), AtHand.ideal())))
        .isCloseTo(2 + 1.2, within(1e-9));
  }

  private static FitQuestion fit(List<PairLayout> layouts, AtHand... microphones) {
    return new FitQuestion(
        Collections.nCopies(3, new PicturedPlayer("horn", new Point3(11.6, 5.2, 1.5))),
        List.of(),
        new Stand(new Point3(11.6, 6.7, 0), -90, ParameterRange.fixed(2.5), 2, 0),
        3,
        layouts,
        List.of(microphones),
        Wish.fill(80),
        List.of(model("two-region")),
        Optional.empty(),
        Air.at(21));
  }
}
