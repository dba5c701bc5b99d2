package org.standoff.kit.stock;

import io.quarkus.arc.All;
import io.quarkus.panache.common.Parameters;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.standoff.kit.Caller;
import org.standoff.kit.Model;
import org.standoff.kit.ModelLocks;
import org.standoff.kit.Precondition;
import org.standoff.kit.Put;
import org.standoff.kit.Sql;
import org.standoff.kit.Transactions;
import org.standoff.kit.house.Houses;

/** The units of the houses, one by one. */
@ApplicationScoped
public class Stock {

  private static final String THIS_UNIT = "select id, serial from unit where id = ?";

  private final Transactions transactions;
  private final Houses houses;
  private final KitCheck check;
  private final List<FreedUnits> freed;

  Stock(Transactions transactions, Houses houses, KitCheck check, @All List<FreedUnits> freed) {
    this.transactions = transactions;
    this.houses = houses;
    this.check = check;
    this.freed = freed;
  }

  /** The unit of that serial number, if the house has it. */
  public Optional<StoredUnit> find(String house, String serial) {
    return transactions.run(() -> row(house, serial).map(Unit::stored));
  }

  /** Counts changes of the house's units. */
  public long revision(String house) {
    return transactions.statements(
        connection ->
            Sql.first(
                    connection,
                    "select stock_revision from house where id = ?",
                    row -> row.getLong("stock_revision"),
                    house)
                .orElse(0L));
  }

  /**
   * Units in the order of their serial numbers.
   *
   * @param after only units after this serial number; empty for the first
   * @param most how many at most
   * @throws org.standoff.kit.house.UnknownHouse where there is no such house
   */
  public List<StoredUnit> list(String house, UnitFilter filter, String after, int most) {
    return transactions.run(
        () -> {
          houses.get(house);
          String query = "house = :house and serial > :after";
          Parameters values = Parameters.with("house", house).and("after", after);
          if (filter.microphone().isPresent()) {
            query += " and microphone = :microphone";
            values = values.and("microphone", filter.microphone().get());
          }
          query += filter.state().isPresent() ? " and state = :state" : " and state <> :state";
          values = values.and("state", filter.state().orElse(UnitState.RETIRED).word());
          return Unit.<Unit>find(query + " order by serial", values).range(0, most - 1).stream()
              .map(Unit::stored)
              .toList();
        });
  }

  /**
   * Adds a unit, or tells it anew. The same again changes nothing. A matched group may have one
   * unit for a while, until the next one is told.
   *
   * @param caller who changes it, for the audit
   * @param supposed asked before anything changes
   * @throws FaultyKit where the microphone is not in the catalogue, or not that of its group
   * @throws UnitsUnderHold where it is promised and would be retired or become another microphone
   */
  public Put<StoredUnit> put(Caller caller, String house, KitUnit wanted, Precondition supposed) {
    return transactions.statements(
        caller,
        connection -> {
          HouseLock.take(connection, house);
          @Nullable Unit known = row(house, wanted.serial()).orElse(null);
          supposed.check(known == null ? OptionalLong.empty() : OptionalLong.of(known.revision));
          Unit unit = known == null ? new Unit() : known;
          unit.house = house;
          if (known == null || !known.stored().unit().equals(wanted)) {
            checkBeside(house, wanted);
            check.refuseLost(connection, List.of(wanted));
            change(connection, unit, wanted);
          }
          return new Put<>(unit.stored(), known == null);
        });
  }

  /**
   * Retires a unit; a retired one stays as it is.
   *
   * @param caller who changes it, for the audit
   * @param supposed asked before anything changes
   * @throws UnknownUnit where the house has no such unit
   * @throws UnitsUnderHold where it is promised
   */
  public StoredUnit retire(Caller caller, String house, String serial, Precondition supposed) {
    return transactions.statements(
        caller,
        connection -> {
          HouseLock.take(connection, house);
          Unit unit = row(house, serial).orElseThrow(() -> new UnknownUnit(serial));
          supposed.check(OptionalLong.of(unit.revision));
          KitUnit told = unit.stored().unit();
          if (told.state() != UnitState.RETIRED) {
            change(connection, unit, told.in(UnitState.RETIRED));
          }
          return unit.stored();
        });
  }

  private void change(Connection connection, Unit unit, KitUnit wanted) throws SQLException {
    boolean isNew = unit.id == null;
    Model after = new Model(unit.house, wanted.microphone());
    Model before = isNew ? after : new Model(unit.house, unit.microphone);
    boolean stays = !isNew && unit.stored().unit().standsAs(wanted);
    boolean wasRetired = !isNew && unit.state.equals(UnitState.RETIRED.word());
    ModelLocks.take(connection, List.of(before, after));
    if (!before.equals(after) || wanted.state() == UnitState.RETIRED && !wasRetired && !isNew) {
      Promises.refuse(connection, THIS_UNIT, unit.id);
    }
    unit.take(wanted);
    unit.persistAndFlush();
    if (!before.equals(after)) {
      Promises.follow(connection, THIS_UNIT, unit.id);
    }
    HouseLock.count(connection, unit.house);
    if (!stays) {
      for (FreedUnits listener : freed) {
        listener.freed(connection, Set.copyOf(List.of(before, after)));
      }
    }
  }

  private void checkBeside(String house, KitUnit wanted) {
    if (wanted.state() == UnitState.RETIRED) {
      return;
    }
    List<KitFault> faults = check.faults(wanted);
    if (!faults.isEmpty()) {
      throw new FaultyKit(faults);
    }
    @Nullable String group = wanted.matchedGroup();
    if (group == null) {
      return;
    }
    Unit.<Unit>find(
            "house = ?1 and matchedGroup = ?2 and state <> 'retired' and serial <> ?3"
                + " and microphone <> ?4 order by serial",
            house,
            group,
            wanted.serial(),
            wanted.microphone())
        .firstResultOptional()
        .ifPresent(
            other -> {
              throw new FaultyKit(List.of(KitCheck.otherMicrophone(0, wanted, other.microphone)));
            });
  }

  private static Optional<Unit> row(String house, String serial) {
    return Unit.find("house = ?1 and serial = ?2", house, serial).firstResultOptional();
  }
}
