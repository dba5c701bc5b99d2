package org.standoff.bench;

import io.agroal.api.AgroalDataSource;
import io.agroal.api.configuration.supplier.AgroalDataSourceConfigurationSupplier;
import io.agroal.api.security.NamePrincipal;
import io.agroal.api.security.SimplePassword;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
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
  private static final int SECONDS = 20;

  private KitBench() {}

  /** Runs the bench in a folder of its own, the first argument. */
  public static void main(String... arguments) throws Exception {
    Path work = Path.of(arguments[0]).toAbsolutePath();
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
      Optional<Double> plain = PlainHolds.perSecond(port, work, CLIENTS, SECONDS);
      Table.row(
          "holds, the plain transaction by pgbench",
          plain
              .map(perSecond -> String.format(Locale.ROOT, "%.0f per second", perSecond))
              .orElse("no pgbench here"));
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
