package org.standoff.bench;

import io.agroal.api.AgroalDataSource;
import io.agroal.api.configuration.supplier.AgroalDataSourceConfigurationSupplier;
import io.agroal.api.security.NamePrincipal;
import io.agroal.api.security.SimplePassword;
import java.io.IOException;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.flywaydb.core.Flyway;
import org.standoff.kit.free.AvailabilityBench;
import org.standoff.launch.EmbeddedDatabase;

/**
 * What kit costs on a durable PostgreSQL with a large stock: availability at the database, holds
 * over HTTP against the same transaction without a service, a house's whole kit as a sheet. Prints
 * figures and asserts nothing.
 */
public final class KitBench {
  private static final int UNITS = Integer.getInteger("bench.kit.units", 1_000_000);
  private static final int HOLDS = Integer.getInteger("bench.kit.holds", 2_000_000);
  private static final int CLIENTS = 8;

  /** Until the compiler of the service has seen enough of them; their CPU falls by half. */
  private static final int WARM_UP_SECONDS = 150;

  private static final int SECONDS = 10;
  private static final int TURNS = 4;

  private KitBench() {}

  /** Runs the bench in a folder of its own, the first argument. */
  public static void main(String... arguments) throws Exception {
    Path work = Path.of(arguments[0]).toAbsolutePath();
    clear(work);
    Files.createDirectories(work);
    int port;
    try (ServerSocket free = new ServerSocket(0)) {
      port = free.getLocalPort();
    }
    try (EmbeddedDatabase database = EmbeddedDatabase.inFolder(work.resolve("data"), port)) {
      String url = "jdbc:postgresql://127.0.0.1:" + database.port() + "/postgres";
      Flyway.configure().dataSource(url, "postgres", "postgres").load().migrate();
      try (AgroalDataSource pool = pool(url)) {
        new AvailabilityBench(pool, UNITS).run(HOLDS);
      }
      try (RunningService service = new RunningService(work, url)) {
        String publisher = service.token("publisher", Optional.of("bench-sheet"), "bench");
        new PublishedSheet(service, publisher).run();
        holds(service, port, work);
      }
    }
  }

  /** In turns and short ones, because how fast the disk is changes from minute to minute. */
  private static void holds(RunningService service, int port, Path work) throws Exception {
    HeldOverHttp http =
        new HeldOverHttp(service, service.token("booker", Optional.empty(), "bench"));
    http.run(CLIENTS, Duration.ofSeconds(WARM_UP_SECONDS));
    double overHttp = 0;
    double byPgbench = 0;
    for (int turn = 1; turn <= TURNS; turn++) {
      HeldOverHttp.Rate rate = http.run(CLIENTS, Duration.ofSeconds(SECONDS));
      Table.row("holds over HTTP, 8 clients", rate.toString());
      Optional<Double> plain = PlainHolds.perSecond(port, work, CLIENTS, SECONDS);
      if (plain.isEmpty()) {
        Table.row("the same transaction by pgbench", "there is no pgbench here");
        return;
      }
      Table.row(
          "the same transaction by pgbench, 8 clients", "%.0f per second".formatted(plain.get()));
      overHttp += rate.perSecond();
      byPgbench += plain.get();
    }
    Table.row("over HTTP, of pgbench's in all turns", "%.2f".formatted(overHttp / byPgbench));
  }

  /** What an earlier run left would be counted too. */
  private static void clear(Path work) throws IOException {
    if (Files.exists(work)) {
      try (Stream<Path> all = Files.walk(work)) {
        for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(path);
        }
      }
    }
  }

  private static AgroalDataSource pool(String url) throws Exception {
    return AgroalDataSource.from(
        new AgroalDataSourceConfigurationSupplier()
            .connectionPoolConfiguration(
                connections ->
                    connections
                        .maxSize(2)
                        .connectionFactoryConfiguration(
                            factory ->
                                factory
                                    .jdbcUrl(url)
                                    .principal(new NamePrincipal("postgres"))
                                    .credential(new SimplePassword("postgres")))));
  }
}
