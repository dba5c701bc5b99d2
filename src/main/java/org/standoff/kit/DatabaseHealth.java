package org.standoff.kit;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import javax.sql.DataSource;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.Readiness;

/**
 * Shows a lost database as a part that is down. The check itself stays up, because an instance
 * without its database still calculates and must not be taken out of service.
 */
@Readiness
@ApplicationScoped
public class DatabaseHealth implements HealthCheck {

  private static final int ANSWER_LIMIT_S = 1;

  private final DataSource dataSource;
  private final SchemaMigration migration;

  DatabaseHealth(DataSource dataSource, SchemaMigration migration) {
    this.dataSource = dataSource;
    this.migration = migration;
  }

  @Override
  public HealthCheckResponse call() {
    return HealthCheckResponse.named("database")
        .withData("server", answers() ? "up" : "down")
        .withData("tables", migration.isDone() ? "ready" : "not ready")
        .up()
        .build();
  }

  private boolean answers() {
    try (Connection connection = dataSource.getConnection()) {
      return connection.isValid(ANSWER_LIMIT_S);
    } catch (SQLException lost) {
      return false;
    }
  }
}
