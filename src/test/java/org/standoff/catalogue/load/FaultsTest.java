package org.standoff.catalogue.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.Finding;
import org.standoff.catalogue.Finding.Severity;
import org.standoff.chain.Microphone;

/** What an author is told: everything at once, each with its place and what would be right. */
class FaultsTest {

  @TempDir Path root;
  private PackFolder packs;

  @BeforeEach
  void aPack() {
    packs = new PackFolder(root).pack("p");
  }

  @Test
  void allFaultsOfAllFilesAreToldAtOnceWithLineAndPointer() {
    packs.write(
        "p/microphones/a.yaml",
        PackFolder.MICROPHONE
            .replace("transducer: condenser", "transducer: condensor")
            .replace("address: side", "adress: side")
            .replace("sensitivity_mv_per_pa: 21", "sensitivity_mv_per_pa: loud"));
    packs.write(
        "p/microphones/b.yaml", PackFolder.MICROPHONE.replace("current_ma: 3", "current_ma: 30"));
    List<String> told = findings().stream().map(Finding::toString).toList();
    assertThat(told)
        .containsExactlyInAnyOrder(
            "p/microphones/a.yaml:3 at /transducer: found \"condensor\", expected one of condenser,"
                + " electret, moving-coil, passive-ribbon, active-ribbon; perhaps condenser",
            "p/microphones/a.yaml:1: found nothing, expected 'address' must be there",
            told.stream().filter(line -> line.contains("/adress:")).findFirst().orElseThrow(),
            "p/microphones/a.yaml:11 at /outputs/0/patterns/0/sensitivity_mv_per_pa: found"
                + " \"loud\", expected a number",
            "p/microphones/b.yaml:5 at /powering/current_ma: found 30, expected at most 10");
  }

  @Test
  void aMisspeltNameIsToldWithTheOneThatWasMeant() {
    packs.write("p/microphones/a.yaml", PackFolder.MICROPHONE.replace("basis:", "bassis:"));
    assertThat(findings())
        .anySatisfy(
            fault -> {
              assertThat(fault.pointer()).isEqualTo("/bassis");
              assertThat(fault.line()).isEqualTo(12);
              assertThat(fault.expected()).startsWith("'basis', or one of format, title");
            });
  }

  @Test
  void equalFiguresOfAFileHaveLinesOfTheirOwn() {
    packs.write("p/microphones/a.yaml", PackFolder.MICROPHONE + "formatt: 1\n");
    assertThat(findings()).singleElement().extracting(Finding::line).isEqualTo(13);
  }

  @Test
  void aReferenceThatLeadsNowhereIsToldWithTheNearestId() {
    packs.write("p/rooms/hall.yaml", PackFolder.ROOM);
    packs.write("p/styles/s.yaml", style("p/hal"));
    Finding fault = findings().get(0);
    assertThat(fault.pointer()).isEqualTo("/surrounding/room");
    assertThat(fault.line()).isEqualTo(10);
    assertThat(fault.found()).isEqualTo("p/hal");
    assertThat(fault.expected()).isEqualTo("the id of a known room; perhaps p/hall");
  }

  @Test
  void aReferenceIntoAPackThatIsNotUsedIsAFaultThoughTheItemIsThere() {
    packs.pack("q").write("q/rooms/hall.yaml", PackFolder.ROOM);
    packs.write("p/styles/s.yaml", style("q/hall"));
    assertThat(findings().get(0).expected()).contains("'uses' in pack.yaml");
    packs.pack("p", "q");
    assertThat(findings()).isEmpty();
  }

  @Test
  void aReferenceToAFileWithFaultsIsNotAFaultOfItsOwn() {
    packs.write("p/rooms/hall.yaml", PackFolder.ROOM.replace("length_m: 8", "length_m: -8"));
    packs.write("p/styles/s.yaml", style("p/hall"));
    assertThat(findings()).singleElement().extracting(Finding::pointer).isEqualTo("/box/length_m");
  }

  @Test
  void aSignalToNoiseRatioThatContradictsTheNoiseIsAWarningAndThePackIsUsed() {
    packs.write("p/microphones/a.yaml", PackFolder.MICROPHONE + "signal_to_noise_db: 78\n");
    packs.write("p/microphones/b.yaml", PackFolder.MICROPHONE + "signal_to_noise_db: 84\n");
    Finding warning = findings().get(0);
    assertThat(findings()).hasSize(1);
    assertThat(warning.severity()).isEqualTo(Severity.WARNING);
    assertThat(warning.file()).isEqualTo("p/microphones/a.yaml");
    assertThat(warning.line()).isEqualTo(13);
    assertThat(warning.expected()).startsWith("85.0 dB, which is 94 dB less");
    assertThat(load().items(Microphone.class)).hasSize(2);
  }

  @Test
  void peaksOutOfOrderOrLopsidedAreFaults() {
    packs.write("p/sources/a.yaml", source(120, 119, 130));
    packs.write("p/sources/b.yaml", source(110, 119, 130));
    packs.write("p/sources/c.yaml", source(110, 119, 129));
    assertThat(findings())
        .extracting(Finding::file, Finding::line, Finding::pointer, Finding::found)
        .containsExactlyInAnyOrder(
            org.assertj.core.groups.Tuple.tuple(
                "p/sources/a.yaml", 9, "/placements/spot/level/peak_db_spl", "120.0, 119.0, 130.0"),
            org.assertj.core.groups.Tuple.tuple(
                "p/sources/b.yaml",
                9,
                "/placements/spot/level/peak_db_spl",
                "110.0, 119.0, 130.0"));
  }

  @Test
  void aFigureThatOnlyTheRecordRefusesIsToldAtItsPlace() {
    packs.write(
        "p/sources/a.yaml",
        source(110, 119, 128)
            .replace(
                "directivity_db",
                "spectrum: { class: melody, lowest_hz: 9000, highest_hz: 100 }\n    directivity_db"));
    Finding fault = findings().get(0);
    assertThat(fault.pointer()).isEqualTo("/placements/spot/spectrum");
    assertThat(fault.expected()).contains("no octave lies between 9000.0 and 100.0 Hz");
  }

  @Test
  void aPackThatUsesOneThatIsNotThereIsFaulty() {
    packs.pack("p", "q");
    Finding fault = findings().get(0);
    assertThat(fault.file()).isEqualTo("p/pack.yaml");
    assertThat(fault.line()).isEqualTo(7);
    assertThat(fault.pointer()).isEqualTo("/uses/0");
    assertThat(fault.found()).isEqualTo("q");
  }

  @Test
  void packsThatUseEachOtherAreBothFaulty() {
    packs.pack("p", "q").pack("q", "p");
    assertThat(load().packs()).allSatisfy(pack -> assertThat(pack.isFaulty()).isTrue());
  }

  @Test
  void aPackWhoseIdIsNotItsFolderIsFaulty() {
    packs.pack("q");
    packs.write(
        "q/pack.yaml", "format: 1\nid: r\ntitle: t\nversion: 1.0.0\nlicence: x\npublisher: x\n");
    Finding fault = load().pack("q").orElseThrow().findings().get(0);
    assertThat(fault.line()).isEqualTo(2);
    assertThat(fault.found()).isEqualTo("r");
    assertThat(fault.expected()).startsWith("q, the name");
  }

  private List<Finding> findings() {
    return load().pack("p").orElseThrow().findings();
  }

  private Catalogue load() {
    return packs.live().reload();
  }

  private static String style(String room) {
    return """
        format: 1
        title: s
        guarded_percentile: 95
        wanted_headroom_db: 4
        target_peak_dbfs: -10
        allowed_filter_loss_db: 1
        noise_distance_db: 60
        isolation_weight: { attack: 1, body: 1, weight: 1, whole: 1, room: -1 }
        evenness_weight: 0.2
        surrounding: { room: %s, neighbour_level_db_spl: 85 }
        """
        .formatted(room);
  }

  private static String source(int low, int typical, int high) {
    return """
        format: 1
        title: s
        kind: instrument
        placements:
          spot:
            title: Spot
            purpose: whole
            radiator: { type: point, radius_m: 0.1 }
            level: { at_m: 1, peak_db_spl: { low: %d, typical: %d, high: %d }, long_term_db_spl: 90 }
            directivity_db: { "125": 0, "500": 1, "2k": 2, "8k": 3 }
            wanted_from_hz: 100
            distance_m: { least: 0.2, most: 1 }
            basis: invented for this test
        """
        .formatted(low, typical, high);
  }
}
