package org.standoff.launch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Map;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class KeptDatabaseTest {

  private static final Duration LIMIT = Duration.ofMinutes(1);

  @TempDir Path folder;
  private int port;
  private KeptDatabase database;
  private Thread keeper;

  @BeforeEach
  void choosePort() throws IOException {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      port = socket.getLocalPort();
    }
  }

  @AfterEach
  void end() throws Exception {
    database.close();
    keeper.join(LIMIT.toMillis());
    assertThat(keeper.isAlive()).as("it ends when it is closed").isFalse();
  }

  private void keep() {
    database = new KeptDatabase(folder, port);
    keeper =
        new Thread(
            () -> {
              try {
                database.keep();
              } catch (InterruptedException ended) {
                Thread.currentThread().interrupt();
              }
            });
    keeper.start();
  }

  @Test
  void aServerThatIsKilledIsBackOnItsPortWithItsRowsHoweverOftenItHappens() throws Exception {
    keep();
    await().atMost(LIMIT).until(database::wasUp);
    try (Connection connection = connect();
        Statement statement = connection.createStatement()) {
      statement.execute("create table kept as select 42 as answer");
    }
    long before = server();
    for (int time = 0; time < 2; time++) {
      long killed = server();
      ProcessHandle.of(killed).orElseThrow().destroyForcibly();
      await()
          .atMost(LIMIT)
          .until(() -> server() != killed && answer("select answer from kept").equals("42"));
    }
    assertThat(server()).isNotEqualTo(before);
  }

  private long server() throws IOException {
    Path note = folder.resolve("postgresql/postmaster.pid");
    return Files.exists(note) ? Long.parseLong(Files.readAllLines(note).get(0).strip()) : 0;
  }

  /** Empty while it does not answer. */
  private String answer(String question) {
    try (Connection connection = connect();
        Statement statement = connection.createStatement();
        ResultSet rows = statement.executeQuery(question)) {
      rows.next();
      return rows.getString(1);
    } catch (SQLException down) {
      return "";
    }
  }

  private Connection connect() throws SQLException {
    Map<String, String> settings = EmbeddedDatabase.settings(port);
    return DriverManager.getConnection(
        settings.get("quarkus.datasource.jdbc.url"),
        settings.get("quarkus.datasource.username"),
        settings.get("quarkus.datasource.password"));
  }
}
