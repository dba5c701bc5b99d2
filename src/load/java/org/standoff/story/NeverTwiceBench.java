package org.standoff.story;

import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.standoff.fixture.PackagedService;
import org.standoff.launch.EmbeddedDatabase;

/**
 * The storm of {@code TwoInstancesIT} for as long as one likes, on a durable PostgreSQL: clients of
 * two packaged instances hang up and retry while sessions are ended and statements run out of time.
 * What became of it is read from the tables alone, and printed.
 */
public final class NeverTwiceBench {

  private static final int CLIENTS = Integer.getInteger("soak.clients", 64);
  private static final int WISHES = Integer.getInteger("soak.wishes", 100);
  private static final Duration LONGEST = Duration.ofHours(1);
  private static final int TRIES = 20;

  /** What must be none. */
  private static final Map<String, String> COUNTS = new LinkedHashMap<>();

  static {
    COUNTS.put(
        "units promised twice at any moment",
        """
        select count(*) from hold_unit a join hold_unit b on b.unit = a.unit and b.hold > a.hold
        where a.occupies and b.occupies
          and lower(a.busy) < upper(b.busy) and lower(b.busy) < upper(a.busy)
        """);
    COUNTS.put(
        "holds made by no key, or by two",
        "select count(*) from hold h"
            + " where (select count(*) from idempotency_key k where k.hold = h.id) <> 1");
    COUNTS.put(
        "lines without all their units",
        """
        select count(*) from hold_line l join hold h on h.id = l.hold
        where h.state in ('tentative', 'confirmed') and l.quantity <> (
            select count(*) from hold_unit u where u.hold = l.hold and u.line = l.line)
        """);
  }

  private NeverTwiceBench() {}

  /**
   * Runs in a folder of its own, the first argument; what an earlier run left stays in the count.
   */
  public static void main(String... arguments) throws Exception {
    Path folder = Path.of(arguments[0]).toAbsolutePath();
    try (EmbeddedDatabase database =
        EmbeddedDatabase.inFolder(folder.resolve("database"), freePort())) {
      Map<String, String> settings = new HashMap<>();
      EmbeddedDatabase.settings(database.port())
          .forEach((name, value) -> settings.put(variable(name), value));
      settings.put("STANDOFF_LIMITS_REQUESTS_AT_ONCE", String.valueOf(CLIENTS));
      Path service = folder.resolve("service");
      try (PackagedService one = PackagedService.start(service, settings);
          PackagedService other = PackagedService.start(service, settings)) {
        HoldTraffic.tellHouse(one);
        run(one, other, database.port());
      }
    }
  }

  private static void run(PackagedService one, PackagedService other, int databasePort)
      throws Exception {
    String desk = one.token("booker", Optional.empty(), "desk-" + System.nanoTime());
    HoldTraffic traffic = new HoldTraffic();
    HoldStorm storm = new HoldStorm(one, other, desk, databasePort, traffic);
    long begun = System.nanoTime();
    storm.rage(CLIENTS, WISHES, LONGEST);
    double seconds = (System.nanoTime() - begun) / 1e9;
    row("clients, seconds", "%d, %.0f", CLIENTS, seconds);
    row("requests sent, of which given up unheard", "%d, %d", storm.sent(), storm.hungUp());
    row("sessions of PostgreSQL ended", "%d", storm.sessionsEnded());
    row("told to come again (503)", "%d", traffic.putOff());
    row("keys without an answer in the end", "%d", traffic.unanswered().size());
    for (int i = 0; i < TRIES && !traffic.unanswered().isEmpty(); i++) {
      traffic.askAgain(i % 2 == 0 ? one : other, desk);
    }
    row("  after asking again", "%d", traffic.unanswered().size());
    row("holds acknowledged", "%d", traffic.acknowledged().size());
    traffic.compareAcknowledged(databasePort);
    row("  of which gone, or with another answer", "0");
    try (Connection connection =
            DriverManager.getConnection(
                "jdbc:postgresql://127.0.0.1:" + databasePort + "/postgres",
                "postgres",
                "postgres");
        Statement statement = connection.createStatement()) {
      for (Map.Entry<String, String> count : COUNTS.entrySet()) {
        row(count.getKey(), "%d", number(statement, count.getValue()));
      }
    }
  }

  private static long number(Statement statement, String question) throws SQLException {
    try (ResultSet rows = statement.executeQuery(question)) {
      rows.next();
      return rows.getLong(1);
    }
  }

  private static void row(String name, String format, Object... values) {
    System.out.printf(Locale.ROOT, "%-44s %s%n", name, String.format(Locale.ROOT, format, values));
  }

  private static String variable(String setting) {
    return setting.toUpperCase(Locale.ROOT).replace('.', '_');
  }

  private static int freePort() throws Exception {
    try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
      return socket.getLocalPort();
    }
  }
}
