package org.standoff.kit;

import io.quarkus.narayana.jta.QuarkusTransaction;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.PersistenceException;
import jakarta.transaction.Status;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.function.Supplier;
import javax.sql.DataSource;

/**
 * The one way to the database for everything in {@code kit}: a transaction around the work, and
 * {@link DatabaseLost} in the place of all that a lost server throws.
 */
@ApplicationScoped
public class Transactions {

  /**
   * Expressions that open every change: who makes it, for the audit, and how long it waits for what
   * others have locked. The actor is their one parameter.
   */
  public static final String SIGN =
      "set_config('standoff.actor', ?, true), set_config('lock_timeout', '10s', true)";

  private final DataSource dataSource;
  private final SchemaMigration migration;
  private final TransactionTimes times;

  Transactions(DataSource dataSource, SchemaMigration migration, TransactionTimes times) {
    this.dataSource = dataSource;
    this.migration = migration;
    this.times = times;
  }

  /** Work on the connection of the transaction; the connection is closed afterwards. */
  @FunctionalInterface
  public interface Statements<T> {
    T run(Connection connection) throws SQLException;
  }

  /**
   * Runs the work in a transaction, in the one that is open where there is one. Whatever it throws
   * takes back everything it did.
   *
   * @throws DatabaseLost where the database can't be reached, went away, or has no tables yet
   * @throws StatementFailed where it refused a statement, also one that Hibernate made
   */
  public <T> T run(Supplier<T> work) {
    if (!migration.isDone()) {
      throw new DatabaseLost("The database is not there yet, or its tables are not ready.");
    }
    boolean joins = QuarkusTransaction.getStatus() != Status.STATUS_NO_TRANSACTION;
    long begun = System.nanoTime();
    try {
      return QuarkusTransaction.joiningExisting().call(work::get);
    } catch (RuntimeException failure) {
      if (LostConnection.isFull(failure)) {
        throw new DatabaseLost(
            "The database has no room left: it can be read, and stores nothing.", failure);
      }
      if (LostConnection.isBehind(failure)) {
        throw new DatabaseLost("The database went away or can't be reached.", failure);
      }
      throw failure instanceof PersistenceException ? StatementFailed.behind(failure) : failure;
    } finally {
      if (!joins) {
        times.spent(System.nanoTime() - begun);
      }
    }
  }

  /** The same for work that changes something: the audit learns who did it. */
  public <T> T run(Caller caller, Supplier<T> work) {
    return run(
        () -> {
          onConnection(connection -> sign(connection, caller));
          return work.get();
        });
  }

  /** The same with the transaction's own connection, for statements in SQL. */
  public <T> T statements(Statements<T> work) {
    return run(() -> onConnection(work));
  }

  /** The same for statements that change something. */
  public <T> T statements(Caller caller, Statements<T> work) {
    return run(caller, () -> onConnection(work));
  }

  private <T> T onConnection(Statements<T> work) {
    try (Connection connection = dataSource.getConnection()) {
      return work.run(connection);
    } catch (SQLException failure) {
      throw new StatementFailed(failure);
    }
  }

  private static String sign(Connection connection, Caller caller) throws SQLException {
    try (PreparedStatement sign = connection.prepareStatement("select " + SIGN)) {
      sign.setString(1, caller.subject());
      sign.executeQuery().close();
    }
    return caller.subject();
  }
}
