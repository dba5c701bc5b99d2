package org.standoff.rest.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.standoff.acoustics.PeakSpl;

class AnswerModuleTest {

  private final ObjectMapper json = mapper();

  record Range(double low, double typical, double high) {}

  record Level(PeakSpl peakDbSpl, Range marginDb, double coefficient) {}

  record Lists(List<Double> atM, double[] gainDb, Map<String, Double> lossDb) {}

  record Perhaps(Optional<String> name, OptionalDouble gainDb) {}

  enum Shape {
    WIDE_CARDIOID
  }

  record Shaped(Shape pattern) {}

  @Test
  void aLevelTypeIsItsBareNumberRoundedByTheNameOutside() throws Exception {
    assertThat(json.writeValueAsString(new Level(new PeakSpl(120.12345), range(), 0.123456789)))
        .isEqualTo(
            "{\"peak_db_spl\":120.12,\"margin_db\":"
                + "{\"low\":1.11,\"typical\":2.22,\"high\":3.33},\"coefficient\":0.123457}");
  }

  @Test
  void entriesOfListsAndTablesAreRoundedByTheNameOfTheWhole() throws Exception {
    Map<String, Double> loss = new LinkedHashMap<>();
    loss.put("125", 0.123456);
    Lists lists = new Lists(List.of(1.23456), new double[] {1.23456, 2}, loss);
    assertThat(json.writeValueAsString(lists))
        .isEqualTo("{\"at_m\":[1.2346],\"gain_db\":[1.23,2],\"loss_db\":{\"125\":0.12}}");
  }

  @Test
  void whatIsNoNumberIsNull() throws Exception {
    Range range = new Range(Double.NaN, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY);
    assertThat(json.writeValueAsString(range))
        .isEqualTo("{\"low\":null,\"typical\":null,\"high\":null}");
  }

  @Test
  void whatIsAbsentIsLeftOut() throws Exception {
    assertThat(json.writeValueAsString(new Perhaps(Optional.empty(), OptionalDouble.empty())))
        .isEqualTo("{}");
    assertThat(json.writeValueAsString(new Perhaps(Optional.of("a"), OptionalDouble.of(1.005001))))
        .isEqualTo("{\"name\":\"a\",\"gain_db\":1.01}");
  }

  @Test
  void constantsAreLowerCaseWithHyphensBothWays() throws JsonProcessingException {
    assertThat(json.writeValueAsString(new Shaped(Shape.WIDE_CARDIOID)))
        .isEqualTo("{\"pattern\":\"wide-cardioid\"}");
    assertThat(json.readValue("{\"pattern\":\"wide-cardioid\"}", Shaped.class).pattern())
        .isEqualTo(Shape.WIDE_CARDIOID);
  }

  private static Range range() {
    return new Range(1.111, 2.222, 3.333);
  }

  private static ObjectMapper mapper() {
    ObjectMapper mapper = new ObjectMapper().registerModule(new Jdk8Module());
    new JsonSetup().customize(mapper);
    return mapper;
  }
}
