package org.standoff.kit.stock;

import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import org.standoff.kit.Caller;
import org.standoff.kit.Model;
import org.standoff.kit.ModelLocks;
import org.standoff.kit.Precondition;
import org.standoff.kit.Sql;
import org.standoff.kit.Transactions;

/**
 * Publishes all units of a house at once, in one transaction: what is told is added or changed,
 * what is not told any more is retired. The same kit again changes nothing. Sets are moved by the
 * database, so that a large kit costs no more than its bytes.
 */
@ApplicationScoped
public class WholeKit {

  /** Sorts and hashes of a large kit stay off the disk. */
  private static final String IN_MEMORY = "set local work_mem = '64MB'";

  /** Holds all that is written later, so that no statement has to join the told kit again. */
  private static final String COMPARE =
      """
      create temporary table difference on commit drop as
      select coalesce(told.serial, unit.serial) as serial,
             unit.id,
             unit.microphone,
             coalesce(told.microphone, unit.microphone) as new_microphone,
             case when told.serial is null then unit.matched_group else told.matched_group end as new_group,
             coalesce(told.state, 'retired') as new_state,
             coalesce(told.day_rate_minor, unit.day_rate_minor) as new_day_rate_minor,
             coalesce(told.note, unit.note) as new_note,
             case when told.serial is null then unit.replacement_minor else told.replacement_minor end
                 as new_replacement_minor,
             case when told.serial is null then unit.match_within_db else told.match_within_db end
                 as new_match_within_db,
             -- one that goes may free others too, for it makes the rest of its group whole
             (told.microphone, told.matched_group, told.state)
                 is distinct from (unit.microphone, unit.matched_group, unit.state) as is_moved,
             case
                 when unit.id is null then 'ADDED'
                 when coalesce(told.state, 'retired') = 'retired' and unit.state <> 'retired' then 'RETIRED'
                 when (told.microphone, told.matched_group, told.state, told.day_rate_minor, told.note,
                         told.replacement_minor, told.match_within_db)
                     is distinct from
                     (unit.microphone, unit.matched_group, unit.state, unit.day_rate_minor, unit.note,
                         unit.replacement_minor, unit.match_within_db)
                     then 'CHANGED'
                 else 'UNCHANGED'
             end as way
      from told
      full join (select * from unit where house = ?) as unit on unit.serial = told.serial
      where told.serial is not null or unit.state <> 'retired'
      """;

  private static final String RENAMED =
      "select id, serial from difference where way = 'CHANGED' and new_microphone <> microphone";

  private static final String TAKEN =
      RENAMED + " union all select id, serial from difference where way = 'RETIRED'";

  private static final String TOUCHED =
      """
      select microphone from difference where is_moved and microphone is not null
      union
      select new_microphone from difference where is_moved\
      """;

  private static final String CHANGE =
      """
      update unit
      set microphone = new_microphone, matched_group = new_group, state = new_state,
          day_rate_minor = new_day_rate_minor, note = new_note,
          replacement_minor = new_replacement_minor, match_within_db = new_match_within_db,
          revision = revision + 1
      from difference
      where difference.id = unit.id and way in ('CHANGED', 'RETIRED')
      """;

  private static final String ADD =
      """
      insert into unit (house, serial, microphone, matched_group, state, day_rate_minor, note,
          replacement_minor, match_within_db)
      select ?, serial, new_microphone, new_group, new_state, new_day_rate_minor, new_note,
          new_replacement_minor, new_match_within_db
      from difference
      where way = 'ADDED'
      order by serial
      """;

  private static final String REPORT =
      """
      select way, count(*) as units,
             (array_agg(serial order by serial) filter (where place <= %d))::text[] as first
      from (select way, serial, row_number() over (partition by way order by serial) as place
            from difference) as numbered
      group by way
      """
          .formatted(PublishReport.MOST_NAMED);

  private enum Way {
    ADDED,
    CHANGED,
    RETIRED,
    UNCHANGED
  }

  private final Transactions transactions;
  private final KitCheck check;
  private final List<FreedUnits> freed;

  WholeKit(Transactions transactions, KitCheck check, @All List<FreedUnits> freed) {
    this.transactions = transactions;
    this.check = check;
    this.freed = freed;
  }

  /**
   * Publishes a kit.
   *
   * @param caller who publishes, for the audit
   * @param house whose kit it is
   * @param kit all its units
   * @param dryRun whether to say only what would change
   * @param supposed told the revision of the house's units before anything changes
   * @throws FaultyKit where the kit contradicts itself or the catalogue
   * @throws UnitsUnderHold where a unit that is promised would be retired or become another one
   */
  public PublishReport publish(
      Caller caller, String house, List<KitUnit> kit, boolean dryRun, Precondition supposed) {
    List<KitFault> faults = check.faults(kit, true);
    if (!faults.isEmpty()) {
      throw new FaultyKit(faults);
    }
    return transactions.statements(
        caller,
        connection -> {
          long before = HouseLock.take(connection, house);
          supposed.check(OptionalLong.of(before));
          return publish(connection, house, kit, dryRun, before);
        });
  }

  private PublishReport publish(
      Connection connection, String house, List<KitUnit> kit, boolean dryRun, long before)
      throws SQLException {
    Sql.change(connection, IN_MEMORY);
    ToldUnits.load(connection, kit);
    Sql.change(connection, COMPARE, house);
    Sql.change(connection, "analyze difference");
    Map<Way, PublishReport.Serials> ways = report(connection);
    boolean changes = ways.keySet().stream().anyMatch(way -> way != Way.UNCHANGED);
    List<Model> touched = models(connection, house);
    if (changes) {
      ModelLocks.take(connection, touched);
      Promises.refuse(connection, TAKEN);
    }
    if (changes && !dryRun) {
      check.refuseLost(connection, kit);
      Sql.change(connection, CHANGE);
      Promises.follow(connection, RENAMED);
      Sql.change(connection, ADD, house);
      HouseLock.count(connection, house);
      for (FreedUnits listener : freed) {
        listener.freed(connection, touched);
      }
    }
    PublishReport.Serials none = new PublishReport.Serials(0, List.of());
    return new PublishReport(
        ways.getOrDefault(Way.ADDED, none),
        ways.getOrDefault(Way.CHANGED, none),
        ways.getOrDefault(Way.RETIRED, none),
        ways.getOrDefault(Way.UNCHANGED, none),
        changes && !dryRun ? before + 1 : before,
        dryRun);
  }

  private static List<Model> models(Connection connection, String house) throws SQLException {
    return Sql.list(connection, TOUCHED, row -> new Model(house, row.getString("microphone")));
  }

  private static Map<Way, PublishReport.Serials> report(Connection connection) throws SQLException {
    Map<Way, PublishReport.Serials> ways = new EnumMap<>(Way.class);
    Sql.list(
            connection,
            REPORT,
            row ->
                Map.entry(
                    Way.valueOf(row.getString("way")),
                    new PublishReport.Serials(
                        row.getLong("units"),
                        List.of((String[]) row.getArray("first").getArray()))))
        .forEach(entry -> ways.put(entry.getKey(), entry.getValue()));
    return ways;
  }
}
