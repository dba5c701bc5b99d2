package org.standoff.shipped.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import com.fasterxml.jackson.databind.MappingIterator;
import com.fasterxml.jackson.dataformat.csv.CsvMapper;
import com.fasterxml.jackson.dataformat.csv.CsvSchema;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.assertj.core.api.SoftAssertions;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.standoff.shipped.ShippedCatalogue;
import org.standoff.shipped.ShippedFile;
import org.standoff.shipped.ShippedPlacement;

/**
 * The shipped sources are those of {@code published/sources.csv}, figure by figure. Its column
 * {@code source_of_value} names where each row comes from: Sivian, Dunn and White 1931 as tabled by
 * Everest, Meyer's book from memory, Crocker, or common practice.
 */
class SourceDataTest {
  private static final List<Map<String, String>> ROWS = read();

  /** Column of the table to JSON pointer in the placement. */
  private static final Map<String, String> FIGURES =
      Map.ofEntries(
          Map.entry("source_radius_m", "/radiator/radius_m"),
          Map.entry("at_m", "/level/at_m"),
          Map.entry("peak_low_db", "/level/peak_db_spl/low"),
          Map.entry("peak_typical_db", "/level/peak_db_spl/typical"),
          Map.entry("peak_high_db", "/level/peak_db_spl/high"),
          Map.entry("long_term_spl_db", "/level/long_term_db_spl"),
          Map.entry("lowest_hz", "/spectrum/lowest_hz"),
          Map.entry("highest_hz", "/spectrum/highest_hz"),
          Map.entry("wanted_from_hz", "/wanted_from_hz"),
          Map.entry("wanted_from_hz_with_companion", "/companion/wanted_from_hz"),
          Map.entry("di_125_db", "/directivity_db/125"),
          Map.entry("di_500_db", "/directivity_db/500"),
          Map.entry("di_2k_db", "/directivity_db/2k"),
          Map.entry("di_8k_db", "/directivity_db/8k"),
          Map.entry("typical_min_m", "/distance_m/least"),
          Map.entry("typical_max_m", "/distance_m/most"));

  private static final Map<String, String> WORDS =
      Map.of(
          "purpose", "/purpose",
          "radiator", "/radiator/type",
          "spectrum", "/spectrum/class",
          "companion", "/companion/purpose",
          "practice", "/custom",
          "source_of_value", "/basis");

  @TestFactory
  Stream<DynamicTest> everyRowIsShippedWithItsFigures() {
    return ROWS.stream().map(row -> dynamicTest(row.get("id"), () -> compare(row)));
  }

  @Test
  void nothingIsShippedInCoreThatTheTableLacks() {
    List<String> known =
        ROWS.stream().map(row -> row.get("source") + " " + row.get("placement")).toList();
    assertThat(ShippedPlacement.all())
        .as("add a row with the source of its figures, or move the placement to another pack")
        .allMatch(
            at -> known.contains(at.source().id().substring("core/".length()) + " " + at.name()));
  }

  private static void compare(Map<String, String> row) {
    ShippedFile source = ShippedCatalogue.find("source", "core/" + row.get("source"));
    ShippedPlacement placement =
        ShippedPlacement.of(source).stream()
            .filter(at -> at.name().equals(row.get("placement")))
            .findFirst()
            .orElseThrow(() -> new AssertionError(source + " lacks " + row.get("placement")));
    SoftAssertions all = new SoftAssertions();
    all.assertThat(source.at("/kind").asText()).as("kind").isEqualTo(row.get("kind"));
    if (!row.get("lw_db").isEmpty()) {
      all.assertThat(source.number("/sound_power_db"))
          .as("lw_db")
          .isEqualTo(Double.parseDouble(row.get("lw_db")));
    }
    WORDS.forEach(
        (column, pointer) ->
            all.assertThat(placement.text(pointer)).as(column).isEqualTo(row.get(column)));
    FIGURES.forEach((column, pointer) -> compare(all, placement, pointer, column, row.get(column)));
    all.assertAll();
  }

  private static void compare(
      SoftAssertions all, ShippedPlacement at, String pointer, String column, String expected) {
    if (expected.isEmpty()) {
      all.assertThat(at.node().at(pointer).isMissingNode()).as(column + " is absent").isTrue();
    } else {
      all.assertThat(at.number(pointer)).as(column).isEqualTo(Double.parseDouble(expected));
    }
  }

  private static List<Map<String, String>> read() {
    try (InputStream file =
            Objects.requireNonNull(
                SourceDataTest.class.getResourceAsStream("/published/sources.csv"));
        MappingIterator<Map<String, String>> rows =
            new CsvMapper()
                .readerFor(Map.class)
                .with(CsvSchema.emptySchema().withHeader())
                .readValues(file)) {
      return rows.readAll();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
