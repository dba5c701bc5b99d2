package org.standoff.kit;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.function.Supplier;
import javax.sql.DataSource;

/**
 * Transactions without the framework, so that laws can be tried on thousands of histories, and so
 * that two services can stand beside each other in one test.
 */
public final class PlainTransactions extends Transactions {

  private final DataSource dataSource;
  private final ThreadLocal<Connection> open = new ThreadLocal<>();

  public PlainTransactions(DataSource dataSource) {
    super(dataSource, null, nanos -> {});
    this.dataSource = dataSource;
  }

  @Override
  public <T> T run(Supplier<T> work) {
    if (open.get() != null) {
      return work.get();
    }
    try {
      return begin(work);
    } catch (RuntimeException failure) {
      if (LostConnection.isBehind(failure)) {
        throw new DatabaseLost("The database went away.", failure);
      }
      throw failure;
    }
  }

  private <T> T begin(Supplier<T> work) {
    try (Connection connection = dataSource.getConnection()) {
      connection.setAutoCommit(false);
      open.set(connection);
      try {
        T result = work.get();
        connection.commit();
        return result;
      } catch (RuntimeException failure) {
        rollBack(connection);
        throw failure;
      } finally {
        open.remove();
      }
    } catch (SQLException failure) {
      throw new StatementFailed(failure);
    }
  }

  @Override
  public <T> T statements(Statements<T> work) {
    return run(
        () -> {
          try {
            return work.run(open.get());
          } catch (SQLException failure) {
            throw new StatementFailed(failure);
          }
        });
  }

  @Override
  public <T> T statements(Caller caller, Statements<T> work) {
    return statements(
        connection -> {
          Sql.list(connection, "select " + SIGN, row -> true, caller.subject());
          return work.run(connection);
        });
  }

  private static void rollBack(Connection connection) {
    try {
      connection.rollback();
    } catch (SQLException gone) {
      // the first failure is the one to tell
    }
  }
}
