package org.standoff.kit.stock;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.UUID;
import org.standoff.kit.Sql;

/** What holds have of units that are about to change. */
final class Promises {

  private Promises() {}

  /**
   * Refuses where one is promised. The models of the units are locked before, so that no booking
   * promises one meanwhile.
   *
   * @param units a query of the columns {@code id} and {@code serial}: the units, as they are now
   * @throws UnitsUnderHold where one is promised
   */
  static void refuse(Connection connection, String units, Object... values) throws SQLException {
    List<UnitsUnderHold.Promise> promises =
        Sql.list(
            connection,
            """
            select taken.serial, held.hold, upper(held.busy) as until
            from (%s) as taken
            join hold_unit as held on held.unit = taken.id
            join hold on hold.id = held.hold
            where held.occupies and held.in_at is null
              and (held.out_at is not null or upper(held.busy) > kit_now())
              and not (hold.state = 'tentative' and hold.expires_at <= kit_now())
            order by taken.serial, upper(held.busy)
            limit %d
            """
                .formatted(units, UnitsUnderHold.MOST_NAMED),
            row ->
                new UnitsUnderHold.Promise(
                    row.getString("serial"),
                    row.getObject("hold", UUID.class),
                    Sql.instant(row, "until")),
            values);
    if (!promises.isEmpty()) {
      throw new UnitsUnderHold(promises);
    }
  }

  /**
   * Lets the time in which returned units are turned round follow them to the microphone that they
   * have become; those that are promised don't become another.
   *
   * @param units a query of the column {@code id}: the units, as they are now
   */
  static void follow(Connection connection, String units, Object... values) throws SQLException {
    Sql.change(
        connection,
        """
        update hold_unit b set microphone = u.microphone
        from (%s) as changed join unit u on u.id = changed.id
        where b.unit = u.id and b.microphone <> u.microphone
          and b.occupies and b.in_at is not null and upper(b.busy) > kit_now()
        """
            .formatted(units),
        values);
  }
}
