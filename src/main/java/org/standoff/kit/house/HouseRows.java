package org.standoff.kit.house;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Duration;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.standoff.kit.Sql;

/** The rows of houses. */
final class HouseRows {

  private static final String SELECT =
      """
      select id, title, zone, currency, hours, turn_round_min, drop_box, weekend_days,
          minimum_charge_minor, revision
      from house
      """;

  /** Bytewise, as pages are cut: the database may order words as a dictionary does. */
  private static final String IN_ORDER = " order by id collate \"C\"";

  private HouseRows() {}

  static Optional<HouseTerms> find(Connection connection, String id) throws SQLException {
    return Sql.first(connection, SELECT + "where id = ?", HouseRows::read, id);
  }

  /** The house, locked to the end of the transaction. */
  static Optional<HouseTerms> lock(Connection connection, String id) throws SQLException {
    return Sql.first(connection, SELECT + "where id = ? for no key update", HouseRows::read, id);
  }

  static List<HouseTerms> named(Connection connection, String[] ids) throws SQLException {
    return Sql.list(
        connection, SELECT + "where id = any(?)" + IN_ORDER, HouseRows::read, (Object) ids);
  }

  static List<HouseTerms> all(Connection connection) throws SQLException {
    return Sql.list(connection, SELECT + IN_ORDER, HouseRows::read);
  }

  /** A new house, or other terms for the one that is there; as stored. */
  static HouseTerms write(Connection connection, HouseTerms terms) throws SQLException {
    return Sql.first(
            connection,
            """
            insert into house (id, title, zone, currency, hours, turn_round_min, drop_box,
                weekend_days, minimum_charge_minor)
            values (?, ?, ?, ?, ?, ?, ?, ?, ?)
            on conflict (id) do update
            set title = excluded.title, zone = excluded.zone, currency = excluded.currency,
                hours = excluded.hours, turn_round_min = excluded.turn_round_min,
                drop_box = excluded.drop_box, weekend_days = excluded.weekend_days,
                minimum_charge_minor = excluded.minimum_charge_minor,
                revision = house.revision + 1
            returning *
            """,
            HouseRows::read,
            terms.id(),
            terms.title(),
            terms.zone().getId(),
            terms.currency().getCurrencyCode(),
            terms.hours().toString(),
            (int) terms.turnRound().toMinutes(),
            terms.dropBox(),
            terms.weekendDays(),
            terms.minimumChargeMinor())
        .orElseThrow();
  }

  private static HouseTerms read(ResultSet row) throws SQLException {
    return new HouseTerms(
        row.getString("id"),
        row.getString("title"),
        ZoneId.of(row.getString("zone")),
        Currency.getInstance(row.getString("currency")),
        OpeningHours.parse(row.getString("hours")),
        Duration.ofMinutes(row.getInt("turn_round_min")),
        row.getBoolean("drop_box"),
        row.getBigDecimal("weekend_days"),
        row.getLong("minimum_charge_minor"),
        row.getLong("revision"));
  }
}
