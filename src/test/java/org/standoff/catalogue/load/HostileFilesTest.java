package org.standoff.catalogue.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.catalogue.Catalogue;
import org.standoff.catalogue.Finding;
import org.standoff.catalogue.Finding.Severity;
import org.standoff.catalogue.ItemId;
import org.standoff.chain.Microphone;

/** Files that mean harm, or look as if: each is refused with a fault that says what and where. */
class HostileFilesTest {
  private static final String FILE = "p/microphones/m.yaml";

  @TempDir Path root;
  private PackFolder packs;

  @BeforeEach
  void aPack() {
    packs = new PackFolder(root.resolve("packs")).pack("p");
  }

  @Test
  void aliasesAreNotFollowedSoNoFileGrowsWhenItIsRead() {
    StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
    for (int i = 1; i < 10; i++) {
      bomb.append("a%d: &a%d [".formatted(i, i));
      bomb.append(("*a" + (i - 1) + ", ").repeat(9)).append("*a").append(i - 1).append("]\n");
    }
    List<Finding> faults = faultsOf(bomb.toString());
    assertThat(faults).allSatisfy(fault -> assertThat(fault.expected()).contains("aliases"));
    assertThat(faults.get(0).line()).isEqualTo(1);
    assertThat(faults.get(1).found()).isEqualTo("&a1");
    assertThat(faults.get(2).found()).isEqualTo("*a0");
  }

  @Test
  void aFileBeyondTheLimitIsNotParsed() {
    String large = PackFolder.MICROPHONE + "#" + "x".repeat(YamlFile.MOST_BYTES);
    assertThat(fault(large).found()).isEqualTo("more than 262144 bytes");
  }

  @Test
  void aFolderWithTooManyFilesIsLeftAloneWhole() throws IOException {
    Path folder = Files.createDirectories(packs.root.resolve("p/microphones"));
    for (int i = 0; i <= PackFolders.MOST_FILES; i++) {
      Files.createFile(folder.resolve("m" + i + ".yaml"));
    }
    Catalogue catalogue = packs.live().reload();
    assertThat(catalogue.packs()).isEmpty();
    assertThat(catalogue.findings())
        .singleElement()
        .extracting(Finding::found)
        .isEqualTo("more than 20000 files");
  }

  @Test
  void aLinkThatLeavesTheFolderIsNotRead() throws IOException {
    Path outside = Files.writeString(root.resolve("secret.yaml"), PackFolder.MICROPHONE);
    Files.createDirectories(packs.root.resolve("p/microphones"));
    Files.createSymbolicLink(packs.root.resolve(FILE), outside);
    Finding fault = onlyFault(packs.live().reload());
    assertThat(fault.file()).isEqualTo(FILE);
    assertThat(fault.found()).isEqualTo("a link that leaves the folder of packs");
  }

  @Test
  void aFolderLinkThatLeavesTheFolderIsNotEntered() throws IOException {
    Path outside = Files.createDirectories(root.resolve("elsewhere"));
    Files.writeString(outside.resolve("m.yaml"), PackFolder.MICROPHONE);
    Files.createSymbolicLink(packs.root.resolve("p/microphones"), outside);
    assertThat(onlyFault(packs.live().reload()).file()).isEqualTo("p/microphones");
  }

  @Test
  void aLinkInsideTheFolderIsReadAsContainersMountTheirFilesSo() throws IOException {
    packs.write("p/.data/m.yaml", PackFolder.MICROPHONE);
    Files.createDirectories(packs.root.resolve("p/microphones"));
    Files.createSymbolicLink(packs.root.resolve(FILE), packs.root.resolve("p/.data/m.yaml"));
    assertThat(packs.live().reload().find(Microphone.class, new ItemId("p", "m"))).isPresent();
  }

  @Test
  void aNameThatStandsTwiceIsToldAtTheSecond() {
    Finding fault = fault(PackFolder.MICROPHONE + "title: Another\n");
    assertThat(fault.line()).isEqualTo(13);
    assertThat(fault.pointer()).isEqualTo("/title");
    assertThat(fault.found()).isEqualTo("'title' a second time");
  }

  @ParameterizedTest
  @ValueSource(strings = {".nan", ".NaN", ".inf", "-.INF", "1e999", "-1e999"})
  void numbersThatAreNotFiniteAreRefused(String number) {
    Finding fault = fault(with("source_impedance_ohm: 120", "source_impedance_ohm: " + number));
    assertThat(fault.line()).isEqualTo(6);
    assertThat(fault.pointer()).isEqualTo("/source_impedance_ohm");
    assertThat(fault.found()).isEqualTo(number);
    assertThat(fault.expected()).startsWith("a finite number");
  }

  @Test
  void aNumberOfAbsurdLengthIsRefused() {
    assertThat(fault(with("120", "1".repeat(65))).expected()).contains("64 characters");
  }

  @ParameterizedTest
  @ValueSource(ints = {40, 100_000})
  void deepNestingEndsTheReading(int depth) {
    Finding fault = fault("a: " + "[".repeat(depth) + "]".repeat(depth));
    assertThat(fault.found()).isEqualTo("more than 32 levels");
  }

  @Test
  void bytesThatAreNotUtf8AreToldWithTheirLine() {
    byte[] latin1 = "format: 1\ntitle: Grüße\n".getBytes(StandardCharsets.ISO_8859_1);
    Finding fault = onlyFault(packs.write(FILE, latin1).live().reload());
    assertThat(fault.line()).isEqualTo(2);
    assertThat(fault.expected()).isEqualTo("a file in UTF-8");
  }

  @Test
  void tabsInPlaceOfSpacesAreToldWithTheirLine() {
    Finding fault = fault("format: 1\npowering:\n\tneed: p48\n");
    assertThat(fault.line()).isEqualTo(3);
    assertThat(fault.expected()).contains("indented with spaces");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"!!java.net.URL [\"http://localhost\"]", "!!str 120", "!own 120", "!!set {a, b}"})
  void tagsAreRefusedWhateverTheyName(String tagged) {
    assertThat(faultsOf(with("120", tagged)))
        .anySatisfy(
            fault -> {
              assertThat(fault.pointer()).isEqualTo("/source_impedance_ohm");
              assertThat(fault.expected()).isEqualTo("the value without a tag");
            });
  }

  @Test
  void aSecondDocumentIsRefused() {
    Finding fault = fault(PackFolder.MICROPHONE + "---\n" + PackFolder.MICROPHONE);
    assertThat(fault.found()).isEqualTo("a second document");
    assertThat(fault.line()).isEqualTo(13);
  }

  @Test
  void anEmptyFileIsNoItem() {
    assertThat(fault("# nothing\n").found()).isEqualTo("nothing");
  }

  @Test
  void aNameThatIsAListIsRefused() {
    assertThat(fault("? [a, b]\n: 1\n").found()).isEqualTo("a name that is no text");
  }

  @Test
  void halfACharacterIsRefusedBeforeItCanSpoilAnAnswer() {
    Finding fault = fault(with("A test condenser", "\"\\uD83D\""));
    assertThat(fault.pointer()).isEqualTo("/title");
    assertThat(fault.found()).isEqualTo("half of a surrogate pair");
  }

  @Test
  void aControlCharacterIsRefused() {
    assertThat(fault(with("A test", "A\u0007test")).expected()).isEqualTo("printable characters");
  }

  @Test
  void wordsOfOlderYamlAreTextsNotTruthsOrTimes() {
    packs.write(FILE, with("A test condenser", "on"));
    packs.write("p/microphones/n.yaml", with("A test condenser", "1:30"));
    Catalogue catalogue = packs.live().reload();
    assertThat(catalogue.items(Microphone.class))
        .extracting(item -> item.value().title())
        .containsExactly("on", "1:30");
  }

  @Test
  void anotherExtensionIsLeftAsideWithANote() {
    packs.microphone(FILE).microphone("p/microphones/n.yml");
    Catalogue catalogue = packs.live().reload();
    assertThat(catalogue.items(Microphone.class)).hasSize(1);
    Finding note = onlyFinding(catalogue);
    assertThat(note.severity()).isEqualTo(Severity.NOTE);
    assertThat(note.file()).isEqualTo("p/microphones/n.yml");
    assertThat(note.expected()).contains(".yaml");
  }

  @Test
  void aFolderOfNoKindIsLeftAsideWithTheNearestName() {
    packs.microphone("p/microphnes/m.yaml");
    assertThat(onlyFinding(packs.live().reload()).expected()).isEqualTo("microphones");
  }

  @ParameterizedTest
  @ValueSource(strings = {"M.yaml", "a b.yaml", "%2e%2fm.yaml", "ä.yaml", "a--b.yaml", "-.yaml"})
  void aFileNameThatIsNoIdIsAFault(String name) {
    packs.microphone("p/microphones/" + name);
    assertThat(onlyFault(packs.live().reload()).expected()).startsWith("a file named with");
  }

  @Test
  void aPackFolderThatIsNoIdIsAFault() {
    packs.write("Big Pack/pack.yaml", "format: 1\n");
    Catalogue catalogue = packs.live().reload();
    assertThat(catalogue.pack("Big Pack").orElseThrow().isFaulty()).isTrue();
    assertThat(catalogue.pack("p").orElseThrow().isFaulty()).isFalse();
  }

  @Test
  void aFolderInPlaceOfAFileIsAFault() throws IOException {
    Files.createDirectories(packs.root.resolve(FILE));
    assertThat(onlyFault(packs.live().reload()).found()).isEqualTo("no ordinary file");
  }

  @Test
  void aNameWithALineBreakCantForgeALineOfTheLog() {
    packs.microphone("p/microphones/a\nb.yaml");
    assertThat(onlyFault(packs.live().reload()).found()).isEqualTo("a?b.yaml");
  }

  @Test
  void neverMoreThanAHundredReadingFaultsAreTold() {
    assertThat(faultsOf("a: .nan\n".repeat(500))).hasSize(100);
  }

  private static String with(String text, String instead) {
    return PackFolder.MICROPHONE.replace(text, instead);
  }

  private Finding fault(String file) {
    packs.write(FILE, file);
    return onlyFault(packs.live().reload());
  }

  private List<Finding> faultsOf(String file) {
    packs.write(FILE, file);
    return packs.live().reload().pack("p").orElseThrow().findings();
  }

  private static Finding onlyFault(Catalogue catalogue) {
    Finding finding = onlyFinding(catalogue);
    assertThat(finding.isFault()).isTrue();
    assertThat(catalogue.items(Microphone.class)).isEmpty();
    return finding;
  }

  private static Finding onlyFinding(Catalogue catalogue) {
    List<Finding> findings = catalogue.pack("p").orElseThrow().findings();
    assertThat(findings).hasSize(1);
    return findings.get(0);
  }
}
