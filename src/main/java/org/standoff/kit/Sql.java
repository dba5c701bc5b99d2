package org.standoff.kit;

import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.UUID;

/**
 * Statements with their values in place. Instants are {@code timestamptz}; arrays of texts,
 * numbers, instants and UUIDs are arrays of PostgreSQL; an empty {@link Optional} is null.
 */
public final class Sql {

  private Sql() {}

  /** Reads one row, on which the cursor stands. */
  @FunctionalInterface
  public interface RowReader<T> {
    T read(ResultSet row) throws SQLException;
  }

  /** All rows of a question, read one by one. */
  public static <T> List<T> list(
      Connection connection, String statement, RowReader<T> reader, Object... values)
      throws SQLException {
    try (PreparedStatement prepared = prepare(connection, statement, values);
        ResultSet rows = prepared.executeQuery()) {
      List<T> read = new ArrayList<>();
      while (rows.next()) {
        read.add(reader.read(rows));
      }
      return read;
    }
  }

  /** The first row of a question, if it has one. */
  public static <T> Optional<T> first(
      Connection connection, String statement, RowReader<T> reader, Object... values)
      throws SQLException {
    return list(connection, statement, reader, values).stream().findFirst();
  }

  /** Changes rows, and tells how many. */
  public static int change(Connection connection, String statement, Object... values)
      throws SQLException {
    try (PreparedStatement prepared = prepare(connection, statement, values)) {
      return prepared.executeUpdate();
    }
  }

  /** A moment in a column that is never null. */
  public static Instant instant(ResultSet row, String column) throws SQLException {
    return row.getObject(column, OffsetDateTime.class).toInstant();
  }

  /** A moment in a column that may be null. */
  public static Optional<Instant> instantIfAny(ResultSet row, String column) throws SQLException {
    return Optional.ofNullable(row.getObject(column, OffsetDateTime.class))
        .map(OffsetDateTime::toInstant);
  }

  private static PreparedStatement prepare(
      Connection connection, String statement, Object... values) throws SQLException {
    PreparedStatement prepared = connection.prepareStatement(statement);
    try {
      for (int i = 0; i < values.length; i++) {
        prepared.setObject(i + 1, value(connection, values[i]));
      }
      return prepared;
    } catch (SQLException | RuntimeException refused) {
      prepared.close();
      throw refused;
    }
  }

  private static Object value(Connection connection, Object value) throws SQLException {
    if (value instanceof Optional<?> optional) {
      return optional.isPresent() ? value(connection, optional.get()) : null;
    }
    if (value instanceof Instant instant) {
      return stamp(instant);
    }
    if (value instanceof String[] texts) {
      return connection.createArrayOf("text", texts);
    }
    if (value instanceof UUID[] ids) {
      return connection.createArrayOf("uuid", ids);
    }
    if (value instanceof Long[] numbers) {
      return connection.createArrayOf("int8", numbers);
    }
    if (value instanceof Integer[] numbers) {
      return connection.createArrayOf("int4", numbers);
    }
    if (value instanceof Boolean[] flags) {
      return connection.createArrayOf("bool", flags);
    }
    if (value instanceof Instant[] instants) {
      return connection.createArrayOf(
          "timestamptz", Arrays.stream(instants).map(Sql::stamp).toArray());
    }
    return value;
  }

  private static OffsetDateTime stamp(Instant instant) {
    return instant.atOffset(ZoneOffset.UTC);
  }
}
