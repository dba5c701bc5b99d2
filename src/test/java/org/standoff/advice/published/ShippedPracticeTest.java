package org.standoff.advice.published;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Placement;
import org.standoff.acoustics.Purpose;
import org.standoff.acoustics.Source;
import org.standoff.advice.Adviser;
import org.standoff.advice.Assessment;
import org.standoff.advice.HouseStyle;
import org.standoff.advice.LinePhantom;
import org.standoff.advice.Position;
import org.standoff.advice.Question;
import org.standoff.advice.Surroundings;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.Item;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.kind.DirectBoxKind;
import org.standoff.catalogue.kind.EnsembleKind;
import org.standoff.catalogue.kind.ListeningModelKind;
import org.standoff.catalogue.kind.MicrophoneKind;
import org.standoff.catalogue.kind.PairKind;
import org.standoff.catalogue.kind.PreampKind;
import org.standoff.catalogue.kind.RoomKind;
import org.standoff.catalogue.kind.SourceKind;
import org.standoff.catalogue.kind.StyleKind;
import org.standoff.catalogue.load.LiveCatalogue;
import org.standoff.catalogue.load.PackFolders;
import org.standoff.fixture.MicrophoneBuilder;
import org.standoff.fixture.PreampBuilder;

/** The customs of {@link CommonPracticeTest}, from the shipped sources and the shipped style. */
class ShippedPracticeTest {
  private static final Catalogue SHIPPED =
      new LiveCatalogue(
              List.of(
                  new MicrophoneKind(),
                  new SourceKind(),
                  new PreampKind(),
                  new DirectBoxKind(),
                  new RoomKind(),
                  new EnsembleKind(),
                  new StyleKind(),
                  new PairKind(),
                  new ListeningModelKind()),
              List.of(new PackFolders(Path.of("catalogue"), "shipped", 0)),
              () -> Instant.EPOCH)
          .reload();

  @ParameterizedTest(name = "{0} {1}, with {2}: {3}, pad {4} dB, filter {5} Hz")
  @CsvSource({
    "kick, inside, , cardioid, 10, ",
    "kick, outside, , cardioid, 10, ",
    "snare, top, , cardioid, 10, ",
    "snare, bottom, , cardioid, 10, ",
    "tom-rack, spot, , cardioid, 10, ",
    "tom-floor, spot, , cardioid, 10, ",
    "drum-kit, room, , omni, 0, 0",
    "grand-piano, hammers, WEIGHT, cardioid, 0, 40",
    "grand-piano, hammers, , cardioid, 0, 0",
    "rotary-cabinet, low-rotor, , cardioid, 0, 0",
  })
  void customFollowsFromTheShippedFiles(
      String item, String place, Purpose companion, String pattern, double padDb, Double hz) {
    Source source = find(Source.class, item);
    Assessment chosen =
        advised(source, source.placements().get(place), Optional.ofNullable(companion));
    assertThat(chosen.settings().pattern().name().id()).isEqualTo(pattern);
    assertThat(chosen.settings().pad().padDb()).isEqualTo(padDb);
    if (hz != null) {
      assertThat(chosen.settings().filter().map(f -> f.highPass().cornerHz()).orElse(0.0))
          .isEqualTo(hz);
    }
  }

  private static Assessment advised(
      Source source, Placement placement, Optional<Purpose> companion) {
    HouseStyle style = find(HouseStyle.class, "house-default");
    Question question =
        new Question(
            placement,
            placement.level(),
            source.soundPower(),
            List.of(new Position(placement.level().atM(), 0, 0, 0)),
            companion.stream().toList(),
            PreampBuilder.aPreamp().build(),
            List.of(),
            LinePhantom.FREE,
            new Surroundings(
                Optional.empty(),
                OptionalDouble.empty(),
                List.of(),
                style.surrounding().neighbourLevelDbSpl()),
            Air.STANDARD,
            style);
    return new Adviser(question)
        .advise(List.of(MicrophoneBuilder.aMultiPattern().build()))
        .ranked()
        .get(0)
        .assessment();
  }

  private static <T> T find(Class<T> type, String item) {
    return SHIPPED
        .find(type, new ItemId("core", item))
        .map(Item::value)
        .orElseThrow(() -> new AssertionError(item + " is not shipped: " + SHIPPED.packs()));
  }
}
