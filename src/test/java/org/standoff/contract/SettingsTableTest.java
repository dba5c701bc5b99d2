package org.standoff.contract;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Golden;

/** README.md lists every setting with its default, as the code has it. */
class SettingsTableTest {
  private static final Path README = Path.of("README.md");
  private static final String BEGIN = "<!-- settings, written by SettingsTableTest -->\n";
  private static final String END = "<!-- end of settings -->";

  @Test
  void theReadmeListsTheSettingsThatThereAre() throws IOException {
    String readme = Files.readString(README);
    int begin = readme.indexOf(BEGIN) + BEGIN.length();
    int end = readme.indexOf(END);
    assertThat(begin).isPositive().isLessThanOrEqualTo(end);
    String now =
        readme.substring(0, begin) + SettingsTable.read().markdown() + readme.substring(end);
    Golden.check(README, now);
  }

  @Test
  void everySettingOfOursIsThereWithItsWords() {
    assertThat(SettingsTable.read().settings())
        .extracting(SettingsTable.Setting::key)
        .contains(
            "standoff.catalogue.folders",
            "standoff.catalogue.look-every",
            "standoff.data.folder",
            "standoff.limits.requests-at-once",
            "standoff.limits.rate.requests",
            "standoff.tokens.keys",
            "quarkus.datasource.jdbc.url",
            "quarkus.datasource.jdbc.max-size",
            "quarkus.datasource.username",
            "quarkus.datasource.password",
            "quarkus.shutdown.delay",
            "quarkus.http.proxy.proxy-address-forwarding",
            "quarkus.http.proxy.trusted-proxies",
            "quarkus.http.host",
            "quarkus.http.port");
    assertThat(SettingsTable.read().settings())
        .allSatisfy(
            setting ->
                assertThat(setting.words()).as(setting.key()).endsWith(".").hasSizeGreaterThan(20));
  }

  /** What a comment names and what a line sets stand close together, and are not run together. */
  @Test
  void aSettingWithoutADefaultHasItsOwnWords() {
    assertThat(SettingsTable.read().settings())
        .filteredOn(setting -> setting.key().startsWith("quarkus.datasource."))
        .extracting(SettingsTable.Setting::row)
        .contains(
            "| `quarkus.datasource.password` | `QUARKUS_DATASOURCE_PASSWORD` | – | What that role proves itself by. |",
            "| `quarkus.datasource.jdbc.acquisition-timeout` |"
                + " `QUARKUS_DATASOURCE_JDBC_ACQUISITION_TIMEOUT` | `2S` | A request waits so long for"
                + " a connection, and is then told to come again (503). |");
  }

  @Test
  void aDefaultIsTheOneInTheCode() {
    assertThat(SettingsTable.read().settings())
        .filteredOn(setting -> setting.key().equals("standoff.limits.rate.window"))
        .extracting(SettingsTable.Setting::value)
        .containsExactly("60s");
  }
}
