package org.standoff.launch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EmbeddedDatabaseTest {

  @TempDir Path folder;

  @Test
  void aKeptFolderStillHoldsItsRowsAfterARestart() throws Exception {
    try (EmbeddedDatabase first = EmbeddedDatabase.inFolder(folder, 0)) {
      run(first, "create table kept as select 42 as answer");
    }
    try (EmbeddedDatabase second = EmbeddedDatabase.inFolder(folder, 0)) {
      assertThat(value(second, "select answer from kept")).isEqualTo("42");
    }
  }

  @Test
  void aKeptFolderIsWrittenDurably() throws Exception {
    try (EmbeddedDatabase database = EmbeddedDatabase.inFolder(folder, 0)) {
      assertThat(value(database, "show fsync")).isEqualTo("on");
      assertThat(value(database, "show synchronous_commit")).isEqualTo("on");
      assertThat(value(database, "show listen_addresses")).isEqualTo("127.0.0.1");
    }
  }

  @Test
  void aFolderInUseIsRefusedAndItsServerLivesOn() throws Exception {
    try (EmbeddedDatabase first = EmbeddedDatabase.inFolder(folder, 0)) {
      assertThatThrownBy(() -> EmbeddedDatabase.inFolder(folder, 0))
          .isInstanceOf(DatabaseUnavailable.class)
          .hasMessageContaining("in use by another running Standoff");
      assertThat(value(first, "select 1")).isEqualTo("1");
    }
  }

  @ParameterizedTest
  @ValueSource(booleans = {false, true})
  void theServerOfAKilledProcessIsEndedAndItsDataTakenUp(boolean serverKilledToo) throws Exception {
    Process owner =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                OwnerOfADatabase.class.getName(),
                folder.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    String line = owner.inputReader().lines().filter("started"::equals).findFirst().orElse("");
    assertThat(line).isEqualTo("started");
    ProcessHandle orphan = ProcessHandle.of(serverIn(folder)).orElseThrow();
    owner.destroyForcibly().waitFor();
    assertThat(isRunning(orphan)).isTrue();
    if (serverKilledToo) {
      orphan.destroyForcibly();
    }

    try (EmbeddedDatabase next = EmbeddedDatabase.inFolder(folder, 0)) {
      assertThat(value(next, "select 1")).isEqualTo("1");
      assertThat(serverIn(folder)).isNotEqualTo(orphan.pid());
      assertThat(isRunning(orphan)).isFalse();
    }
  }

  @Test
  void aFolderThatCannotBeMadeSaysWhatToDo() throws IOException {
    Path file = Files.writeString(folder.resolve("file"), "not a folder");
    assertThatThrownBy(() -> EmbeddedDatabase.inFolder(file.resolve("below"), 0))
        .isInstanceOf(DatabaseUnavailable.class)
        .hasMessageContaining("QUARKUS_DATASOURCE_JDBC_URL");
  }

  @Test
  void rootIsToldToRunAsAPlainUser() {
    assertThat(DatabaseUnavailable.because(new IOException("initdb"), true))
        .hasMessageContaining("refuses to run as root")
        .hasMessageContaining("USER 185")
        .hasMessageContaining("QUARKUS_DATASOURCE_JDBC_URL");
  }

  @Test
  void theSettingsNameTheLoopbackAddress() {
    assertThat(EmbeddedDatabase.settings(5433))
        .containsEntry("quarkus.datasource.jdbc.url", "jdbc:postgresql://127.0.0.1:5433/postgres");
  }

  private static long serverIn(Path folder) throws IOException {
    return Long.parseLong(
        Files.readAllLines(folder.resolve("postgresql/postmaster.pid")).get(0).strip());
  }

  /** A process that ended but was not yet collected by its new parent has no command any more. */
  private static boolean isRunning(ProcessHandle process) {
    return process.isAlive() && process.info().command().isPresent();
  }

  private static void run(EmbeddedDatabase database, String sql) throws SQLException {
    try (Connection connection = connect(database);
        Statement statement = connection.createStatement()) {
      statement.execute(sql);
    }
  }

  private static String value(EmbeddedDatabase database, String sql) throws SQLException {
    try (Connection connection = connect(database);
        Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(sql)) {
      assertThat(rows.next()).isTrue();
      return rows.getString(1);
    }
  }

  private static Connection connect(EmbeddedDatabase database) throws SQLException {
    Map<String, String> settings = EmbeddedDatabase.settings(database.port());
    return DriverManager.getConnection(
        settings.get("quarkus.datasource.jdbc.url"),
        settings.get("quarkus.datasource.username"),
        settings.get("quarkus.datasource.password"));
  }

  /** Runs in a process of its own that the test kills. */
  static final class OwnerOfADatabase {

    private OwnerOfADatabase() {}

    @SuppressWarnings("resource")
    public static void main(String... args) throws IOException {
      EmbeddedDatabase.inFolder(Path.of(args[0]), 0);
      System.out.println("started");
      while (System.in.read() >= 0) {
        // lives until it is killed, or until the test that started it is gone
      }
    }
  }
}
