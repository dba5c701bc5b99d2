package org.standoff.rest.kit;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.standoff.kit.stock.KitCheck;
import org.standoff.kit.stock.KitChecks;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;

class KitSheetTest {

  private static final String HEADER = "serial,microphone,day_rate_minor\n";
  private static final int MEBIBYTE = 1 << 20;

  @Test
  void aHeaderOfAMebibyteOfCommasIsOneFault() {
    Fault only = onlyFault(",".repeat(MEBIBYTE));
    assertThat(only.row()).isEqualTo(1);
    assertThat(only.code()).isEqualTo(FaultCode.WRONG_LENGTH);
    assertThat(only.found()).isEqualTo("more than 100 cells");
    assertThat(only.allowed()).isEqualTo("at most 8 cells");
  }

  @Test
  void aRowOfAMebibyteOfCommasIsOneFaultAndTheRowsAfterItAreNotRead() {
    Fault only = onlyFault(HEADER + ",".repeat(MEBIBYTE) + "\nS 1,,x\n");
    assertThat(only.row()).isEqualTo(2);
    assertThat(only.code()).isEqualTo(FaultCode.WRONG_LENGTH);
    assertThat(only.found()).isEqualTo("more than 100 cells");
  }

  @Test
  void aRowWithSomeCellsTooManyIsCountedAndTheNextOneIsRead() {
    List<Fault> faults = faults(HEADER + ",".repeat(99) + "\nS1\n");
    assertThat(faults).extracting(Fault::row).containsExactly(2, 3);
    assertThat(faults).extracting(Fault::found).containsExactly("100 cells", "1 cells");
  }

  @Test
  void ofAHeaderOfAHundredUnknownColumnsAHundredFaultsAreTold() {
    String header =
        IntStream.range(0, 100).mapToObj(i -> "column " + i).collect(Collectors.joining(","));
    assertThat(faults(header)).hasSize(KitCheck.MOST_FAULTS);
  }

  private static Fault onlyFault(String sheet) {
    List<Fault> faults = faults(sheet);
    assertThat(faults).hasSize(1);
    return faults.get(0);
  }

  private static List<Fault> faults(String sheet) {
    InvalidRequest refused =
        catchThrowableOfType(
            InvalidRequest.class,
            () ->
                KitSheet.read(new ByteArrayInputStream(sheet.getBytes(UTF_8)))
                    .units(KitChecks.ofAnEmptyCatalogue()));
    return refused.faults();
  }
}
