package org.standoff.kit.stock;

import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.UUID;
import org.standoff.kit.Sql;

/** Finds the holds that have units which would be taken away. */
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
}
