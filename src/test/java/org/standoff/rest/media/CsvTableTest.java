package org.standoff.rest.media;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

class CsvTableTest {
  @Test
  void headerAndRowsEndWithCrlf() {
    CsvTable table = new CsvTable(List.of("id", "gain_db"));
    table.row(List.of("core/a", 12.5));
    assertThat(table.text()).isEqualTo("id,gain_db\r\ncore/a,12.5\r\n");
  }

  @Test
  void textThatASpreadsheetWouldRunIsDisarmedAndNegativeNumbersAreNot() {
    CsvTable table = new CsvTable(List.of("title", "peak_dbfs"));
    table.row(List.of("=HYPERLINK(1)", -10.5));
    table.row(Arrays.asList("@x", null));
    assertThat(table.text().lines().skip(1))
        .containsExactly("\"'=HYPERLINK(1)\",-10.5", "\"'@x\",");
  }

  @Test
  void quotesAndCommasAreQuoted() {
    CsvTable table = new CsvTable(List.of("title"));
    table.row(List.of("two \"heads\", one drum"));
    assertThat(table.text()).contains("\"two \"\"heads\"\", one drum\"");
  }

  @Test
  void figuresAreRoundedAndWrittenWithoutExponentOrEmptyDigits() {
    CsvTable table = new CsvTable(List.of("pad_db", "clip_probability", "noise_dba"));
    table.row(List.of(20.0, 0.00049, Double.NaN));
    assertThat(table.text().lines().skip(1)).containsExactly("20,0.0005,");
  }
}
