package org.standoff.pairs.listening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.standoff.fixture.ShippedPairs.model;

import java.util.List;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.ShippedPairs;
import org.standoff.pairs.listening.LimitPolyline.Corner;
import org.standoff.pairs.listening.MeasuredPoints.Point;

class ListeningModelTest {
  private static final List<ListeningModel> SHIPPED = ShippedPairs.models();
  private static final Study STUDY =
      new Study("inline", "title", "citation", "note", OptionalDouble.empty());

  @Property(seed = "401", tries = 500)
  void everyModelIsOddAndStaysBetweenTheLoudspeakers(
      @ForAll @DoubleRange(min = -40, max = 40) double levelDb,
      @ForAll @DoubleRange(min = -4, max = 4) double timeMs) {
    for (ListeningModel model : SHIPPED) {
      assertThat(model.sidewaysPct(-levelDb, -timeMs))
          .isCloseTo(-model.sidewaysPct(levelDb, timeMs), within(1e-9));
      model
          .imagePct(levelDb, timeMs)
          .ifPresent(position -> assertThat(position).isBetween(-100.0, 100.0));
    }
  }

  @Property(seed = "402", tries = 500)
  void moreLevelOrMoreLeadNeverPullsTheImageBack(
      @ForAll @DoubleRange(min = 0, max = 20) double levelDb,
      @ForAll @DoubleRange(min = 0, max = 2) double timeMs,
      @ForAll @DoubleRange(min = 0, max = 3) double more) {
    for (ListeningModel model : SHIPPED) {
      double before = model.sidewaysPct(levelDb, timeMs);
      assertThat(model.sidewaysPct(levelDb + more, timeMs)).isGreaterThanOrEqualTo(before - 1e-9);
      assertThat(model.sidewaysPct(levelDb, timeMs + more / 10))
          .isGreaterThanOrEqualTo(before - 1e-9);
    }
  }

  @Test
  void everyCornerOfALimitReachesTheSide() {
    LimitPolyline limit = (LimitPolyline) model("limit-polyline");
    for (Corner corner : limit.limit()) {
      assertThat(limit.sidewaysPct(corner.levelDb(), corner.timeMs())).isCloseTo(100, within(1e-9));
      assertThat(limit.sidewaysPct(corner.levelDb() / 2, corner.timeMs() / 2))
          .isCloseTo(50, within(1e-9));
    }
    assertThat(limit.imagePct(3, 0.1)).isEmpty();
  }

  @Test
  void contradictingCuesCloseToEachOtherStayInTheMiddle() {
    ListeningModel limit = model("limit-polyline");
    assertThat(limit.sidewaysPct(13, -1)).isZero();
    assertThat(limit.sidewaysPct(15, -0.1)).isBetween(80.0, 100.0);
    assertThat(limit.sidewaysPct(-3, 1)).isBetween(50.0, 70.0);
  }

  @Test
  void measuredImagesStayPastTheLastPoint() {
    ListeningModel points = model("simonsen-points");
    assertThat(points.sidewaysPct(30, 0)).isCloseTo(100, within(1e-9));
    assertThat(points.imagePct(30, 3).orElseThrow()).isEqualTo(100);
  }

  @Test
  void studiesDisagreeAndTheSpreadSaysByHowMuch() {
    Images images = Images.of(SHIPPED, 2.5, 0);
    assertThat(images.images())
        .extracting(Image::modelId)
        .containsExactly(
            "core/linear-factors",
            "core/simonsen-points",
            "core/straight-trade",
            "core/two-region");
    assertThat(images.spreadPct()).isCloseTo(100.0 / 3 - 250.0 / 15, within(1e-9));
    assertThat(Images.of(List.of(), 2.5, 0).spreadPct()).isZero();
  }

  @Test
  void aPositionPastTheStudyIsMarked() {
    List<ListeningModel> linear = List.of(model("linear-factors"));
    assertThat(Images.of(linear, 9, 0).images().get(0).beyondStudy()).isFalse();
    assertThat(Images.of(linear, 11, 0).images().get(0).beyondStudy()).isTrue();
  }

  @Test
  void differencesThatAreNoNumbersAreRefused() {
    for (ListeningModel model : SHIPPED) {
      assertThatThrownBy(() -> model.imagePct(Double.NaN, 0))
          .isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> model.imagePct(0, Double.NEGATIVE_INFINITY))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Test
  void figuresThatMakeNoModelAreRefused() {
    assertThatThrownBy(() -> new TwoRegion(STUDY, 0, 1, 1, 1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new LinearFactors(STUDY, 1, Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new StraightTrade(STUDY, 15, -1))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new MeasuredPoints(STUDY, List.of(), List.of(new Point(1, 10)), 30))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () ->
                new MeasuredPoints(
                    STUDY,
                    List.of(new Point(2, 10), new Point(3, 9)),
                    List.of(new Point(1, 10)),
                    30))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("rise");
    assertThatThrownBy(
            () -> new LimitPolyline(STUDY, List.of(new Corner(15, 0), new Corner(6, 0.5))))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(
            () ->
                new LimitPolyline(
                    STUDY, List.of(new Corner(15, 0), new Corner(16, 0.5), new Corner(0, 1))))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aBaseIsNeitherClosedNorBehindTheListener() {
    assertThatThrownBy(() -> new LoudspeakerBase(0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> new LoudspeakerBase(91)).isInstanceOf(IllegalArgumentException.class);
  }
}
