package org.standoff.story;

import java.io.IOException;
import java.io.OutputStream;
import java.net.InetAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;
import org.standoff.fixture.PackagedService;

/**
 * Many clients want the same few units over two instances of the service. They hang up before their
 * answer and ask the other instance again with the same key, while PostgreSQL ends their sessions
 * and lets their statements run out of time.
 */
final class HoldStorm {

  private static final String TIMEOUT_OF_STATEMENTS = "15ms";

  private final PackagedService one;
  private final PackagedService other;
  private final String token;
  private final int databasePort;
  private final HoldTraffic traffic;
  private final AtomicInteger sent = new AtomicInteger();
  private final AtomicInteger hungUp = new AtomicInteger();
  private final AtomicInteger sessionsEnded = new AtomicInteger();

  /**
   * @param token of the desk that asks
   * @param databasePort where the PostgreSQL of both instances listens on the loopback address
   */
  HoldStorm(
      PackagedService one,
      PackagedService other,
      String token,
      int databasePort,
      HoldTraffic traffic) {
    this.one = one;
    this.other = other;
    this.token = token;
    this.databasePort = databasePort;
    this.traffic = traffic;
  }

  /** Requests that were sent, those that were not waited for too. */
  int sent() {
    return sent.get();
  }

  /** Requests whose client hung up. */
  int hungUp() {
    return hungUp.get();
  }

  /** Sessions of PostgreSQL that were ended in the middle of whatever they did. */
  int sessionsEnded() {
    return sessionsEnded.get();
  }

  /** Returns when all have asked; PostgreSQL is left alone again then. */
  void rage(int clients, int wishesOfAClient, Duration longest) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(clients + 1);
    try {
      List<Future<?>> asking = new ArrayList<>();
      for (int client = 0; client < clients; client++) {
        Random random = new Random(client);
        asking.add(threads.submit(() -> ask(random, wishesOfAClient)));
      }
      Future<?> trouble = threads.submit(this::makeTrouble);
      for (Future<?> client : asking) {
        client.get(longest.toSeconds(), TimeUnit.SECONDS);
      }
      trouble.cancel(true);
      threads.shutdown();
      threads.awaitTermination(longest.toSeconds(), TimeUnit.SECONDS);
    } finally {
      threads.shutdownNow();
    }
    try (Connection connection = connect()) {
      leaveAlone(connection);
    }
  }

  private Void ask(Random random, int wishes) throws IOException {
    for (int i = 0; i < wishes; i++) {
      Map.Entry<String, String> wish = traffic.wish(random);
      PackagedService first = random.nextBoolean() ? one : other;
      if (random.nextInt(3) == 0) {
        sendAndHangUp(first, wish);
      }
      sent.incrementAndGet();
      traffic.ask(first == one ? other : one, token, wish);
    }
    return null;
  }

  private void sendAndHangUp(PackagedService service, Map.Entry<String, String> wish)
      throws IOException {
    byte[] body = wish.getValue().getBytes(StandardCharsets.UTF_8);
    String head =
        """
        POST /v1/holds HTTP/1.1
        Host: 127.0.0.1
        Authorization: Bearer %s
        Content-Type: application/json
        Idempotency-Key: %s
        Content-Length: %d

        """
            .formatted(token, wish.getKey(), body.length)
            .replace("\n", "\r\n");
    sent.incrementAndGet();
    hungUp.incrementAndGet();
    try (Socket socket = new Socket(InetAddress.getLoopbackAddress(), service.port())) {
      OutputStream out = socket.getOutputStream();
      out.write(head.getBytes(StandardCharsets.US_ASCII));
      out.write(body);
      out.flush();
      socket.setSoLinger(true, 0);
    }
  }

  /**
   * Ends a session at work every now and then. In some stretches the sessions that come in their
   * place have hardly any time for a statement.
   */
  private Void makeTrouble() throws SQLException {
    try (Connection connection = connect();
        Statement statement = connection.createStatement()) {
      for (int round = 0; !Thread.currentThread().isInterrupted(); round++) {
        if (round % 20 == 0) {
          boolean hurry = round % 40 == 0;
          statement.execute(
              hurry
                  ? "alter database postgres set statement_timeout = '"
                      + TIMEOUT_OF_STATEMENTS
                      + "'"
                  : "alter database postgres reset statement_timeout");
        }
        end(statement, "and state in ('active', 'idle in transaction') order by random() limit 1");
        statement.execute("select pg_sleep(0.05)");
      }
    }
    return null;
  }

  private void leaveAlone(Connection connection) throws SQLException {
    try (Statement statement = connection.createStatement()) {
      statement.execute("alter database postgres reset statement_timeout");
      end(statement, "");
    }
  }

  private void end(Statement statement, String which) throws SQLException {
    try (ResultSet ended =
        statement.executeQuery(
            "select pg_terminate_backend(pid) from pg_stat_activity where pid <> pg_backend_pid()"
                + " and backend_type = 'client backend' "
                + which)) {
      while (ended.next()) {
        sessionsEnded.incrementAndGet();
      }
    }
  }

  /** What makes the trouble is not to run into it: its own statements have all the time. */
  private Connection connect() throws SQLException {
    return DriverManager.getConnection(
        "jdbc:postgresql://127.0.0.1:"
            + databasePort
            + "/postgres?options=-c%20statement_timeout=0",
        "postgres",
        "postgres");
  }
}
