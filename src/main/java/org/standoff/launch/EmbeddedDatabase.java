package org.standoff.launch;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A real PostgreSQL that needs no installation. It listens on the loopback address only and ends
 * with the process that started it.
 */
public final class EmbeddedDatabase implements AutoCloseable {

  private static final Duration START_LIMIT = Duration.ofSeconds(60);
  private static final String USER = "postgres";
  private static final boolean USER_IS_ROOT = "root".equals(System.getProperty("user.name"));

  private final EmbeddedPostgres server;
  private final @Nullable FolderLock lock;

  private EmbeddedDatabase(EmbeddedPostgres server, @Nullable FolderLock lock) {
    this.server = server;
    this.lock = lock;
  }

  /** Keeps its data in the folder, durably, and takes up what an earlier run left there. */
  public static EmbeddedDatabase inFolder(Path folder, int port) {
    @Nullable FolderLock lock = null;
    try {
      Path home = Files.createDirectories(folder).toRealPath();
      Path cluster = cluster(home);
      lock = FolderLock.on(home);
      Path programs = programs(home);
      OrphanServer.endIn(cluster, programs);
      EmbeddedPostgres.Builder builder =
          onLoopback(port)
              // a temporary folder may be swept while the server runs, or belong to another user
              .setOverrideWorkingDirectory(programs.toFile())
              .setDataDirectory(cluster)
              .setCleanDataDirectory(false)
              // the library switches both off, which is right for tests only
              .setServerConfig("fsync", "on")
              .setServerConfig("synchronous_commit", "on");
      return new EmbeddedDatabase(builder.start(), lock);
    } catch (IOException | RuntimeException failure) {
      release(lock);
      if (failure instanceof DatabaseUnavailable known) {
        throw known;
      }
      throw DatabaseUnavailable.because(failure, USER_IS_ROOT);
    }
  }

  /** Forgets everything when it ends; for tests. Port 0 takes any that is free. */
  public static EmbeddedDatabase forgetful(int port) {
    String user = System.getProperty("user.name");
    Path binaries = Path.of(System.getProperty("java.io.tmpdir"), "standoff-" + user);
    try {
      return new EmbeddedDatabase(
          onLoopback(port).setOverrideWorkingDirectory(binaries.toFile()).start(), null);
    } catch (IOException | RuntimeException failure) {
      throw DatabaseUnavailable.because(failure, USER_IS_ROOT);
    }
  }

  private static EmbeddedPostgres.Builder onLoopback(int port) {
    EmbeddedPostgres.Builder builder =
        EmbeddedPostgres.builder()
            .setPGStartupWait(START_LIMIT)
            .setServerConfig("listen_addresses", "127.0.0.1");
    return port == 0 ? builder : builder.setPort(port);
  }

  /** The settings under which the data source finds a server on this port. */
  public static Map<String, String> settings(int port) {
    return Map.of(
        StartSettings.JDBC_URL,
        "jdbc:postgresql://127.0.0.1:" + port + "/postgres",
        "quarkus.datasource.username",
        USER,
        "quarkus.datasource.password",
        USER);
  }

  public int port() {
    return server.getPort();
  }

  /** The process of the server that keeps its data in this folder. */
  static ServerProcess processIn(Path folder) throws IOException {
    Path home = folder.toRealPath();
    return new ServerProcess(cluster(home), programs(home), USER_IS_ROOT);
  }

  private static Path cluster(Path home) {
    return home.resolve("postgresql");
  }

  private static Path programs(Path home) {
    return home.resolve("server");
  }

  @Override
  public void close() throws IOException {
    server.close();
    release(lock);
  }

  private static void release(@Nullable FolderLock lock) {
    if (lock != null) {
      lock.close();
    }
  }
}
