package org.standoff.shipped;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.standoff.acoustics.Air;
import org.standoff.catalogue.Sheet;
import org.standoff.catalogue.kind.ListeningModelReader;
import org.standoff.catalogue.kind.PairReader;
import org.standoff.fixture.ShippedPairs;
import org.standoff.pairs.PairHearing;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.PairPlace;
import org.standoff.pairs.Parameter;
import org.standoff.pairs.SoundOrigin;
import org.standoff.pairs.StereoDifferences;
import org.standoff.pairs.Technique;
import org.standoff.pairs.listening.ListeningModel;

/** Laws over the shipped stereo layouts and listening models. */
class PairsTest {
  static List<PairLayout> layouts() {
    return ShippedPairs.layouts();
  }

  static List<ListeningModel> models() {
    return ShippedPairs.models();
  }

  @Test
  void everyFamilyOfLayoutsIsShipped() {
    assertThat(layouts().stream().map(PairLayout::technique).collect(Collectors.toSet()))
        .as("ship a layout of each family")
        .containsExactlyInAnyOrder(Technique.values());
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void aSourceOnTheLeftIsLouderOrEarlierOnTheLeft(PairLayout layout) {
    PairHearing hearing = PairHearing.of(layout.usualPair(PairPlace.ORIGIN), Air.STANDARD);
    StereoDifferences left = hearing.differences(SoundOrigin.at(25, 4));
    StereoDifferences ahead = hearing.differences(SoundOrigin.at(0, 4));
    assertThat(left.levelDb() > 0.5 || left.timeMs() > 0.05)
        .as("%s: left and right are exchanged, or an angle has the wrong sign", layout.id())
        .isTrue();
    assertThat(left.levelDb()).isGreaterThanOrEqualTo(0);
    assertThat(left.timeMs()).isGreaterThanOrEqualTo(0);
    assertThat(Math.abs(ahead.levelDb()) + Math.abs(ahead.timeMs())).isLessThan(1e-9);
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void aLayoutHasEveryMeasureThatItsCapsulesUse(PairLayout layout) {
    Set<Parameter> used = new HashSet<>();
    layout
        .capsules()
        .forEach(
            plan -> {
              if (plan.spacings() != 0) {
                used.add(Parameter.SPACING);
              }
              if (plan.forwards() != 0) {
                used.add(Parameter.FORWARD);
              }
              if (plan.angles() != 0) {
                used.add(Parameter.ANGLE);
              }
            });
    if (layout.matrixed()) {
      used.add(Parameter.SIDE_GAIN);
    }
    if (layout.technique() == Technique.BAFFLED) {
      used.add(Parameter.DISC_DIAMETER);
    }
    assertThat(layout.parameters().keySet())
        .as("%s: give each measure that a capsule uses, and no other", layout.id())
        .isEqualTo(used);
  }

  @ParameterizedTest
  @MethodSource("models")
  void everyModelReachesTheSideByLevelAloneAndByTimeAlone(ListeningModel model) {
    assertThat(model.sidewaysPct(20, 0)).isGreaterThanOrEqualTo(100 - 1e-9);
    assertThat(model.sidewaysPct(0, 1.5)).isGreaterThanOrEqualTo(100 - 1e-9);
    assertThat(model.sidewaysPct(1, 0)).isBetween(0.0, 20.0);
    assertThat(model.sidewaysPct(0, 0)).isZero();
  }

  @ParameterizedTest(name = "{0}: {1}{2} = {3}")
  @CsvSource(
      delimiter = '|',
      value = {
        "pair | core/coincident | /capsules/0 | channel | top",
        "pair | core/coincident | /capsules/0 | pattern | kidney",
        "pair | core/coincident | /parameters/angle_deg | most | 200",
        "pair | core/coincident | '' | patterns | []",
        "pair | core/coincident | /parameters | width_m | { least: 0, usual: 0, most: 0 }",
        "listening-model | core/two-region | '' | side_level_db | 15",
        "listening-model | core/two-region | '' | method | points",
        "listening-model | core/straight-trade | '' | side_time_ms | 0",
        "listening-model | core/limit-polyline | /limit/0 | level_db | -1",
      })
  void aFileWithOneImpossibleFigureIsRefused(
      String kind, String id, String pointer, String property, String value) {
    JsonNode sound = ShippedCatalogue.find(kind, id).content();
    ObjectNode changed = sound.deepCopy();
    ((ObjectNode) changed.at(pointer)).set(property, ShippedCatalogue.yaml(value));
    assertThat(ShippedCatalogue.schema(kind).validate(sound)).extracting(Error::toString).isEmpty();
    assertThat(ShippedCatalogue.schema(kind).validate(changed)).isNotEmpty();
  }

  @ParameterizedTest(name = "{0}: {1}{2} = {3}")
  @CsvSource(
      delimiter = '|',
      value = {
        "pair | core/coincident | /capsules/0 | channel | right",
        "pair | core/coincident | /capsules/0 | channel | mid",
        "pair | core/coincident | /parameters/angle_deg | least | 130",
        "pair | core/baffled-omnis | /capsules/0 | spacings | 0.5",
        "listening-model | core/simonsen-points | /level_points/2 | image_deg | 5",
        "listening-model | core/limit-polyline | /limit/1 | time_ms | 2",
      })
  void figuresThatContradictEachOtherAreRefused(
      String kind, String id, String pointer, String property, String value) {
    ObjectNode changed = ShippedCatalogue.find(kind, id).content().deepCopy();
    ((ObjectNode) changed.at(pointer)).set(property, ShippedCatalogue.yaml(value));
    Sheet sheet = new Sheet(changed);
    assertThatThrownBy(
            () -> {
              if (kind.equals("pair")) {
                PairReader.read(id, sheet);
              } else {
                ListeningModelReader.read(id, sheet);
              }
            })
        .isInstanceOf(RuntimeException.class)
        .hasMessageNotContaining("null");
  }

  @Test
  void everyMethodOfTheSchemaIsShippedOnce() {
    JsonNode methods = ShippedCatalogue.schemaNode("listening-model").at("/properties/method/enum");
    List<String> shipped =
        ShippedCatalogue.ofKind("listening-model").stream()
            .map(file -> file.content().get("method").asText())
            .toList();
    String[] known = new String[methods.size()];
    Arrays.setAll(known, at -> methods.get(at).asText());
    assertThat(shipped).containsExactlyInAnyOrder(known);
  }
}
