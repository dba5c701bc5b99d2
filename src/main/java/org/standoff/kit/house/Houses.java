package org.standoff.kit.house;

import io.quarkus.arc.All;
import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import org.jspecify.annotations.Nullable;
import org.standoff.catalogue.NearMiss;
import org.standoff.kit.Caller;
import org.standoff.kit.Precondition;
import org.standoff.kit.Put;
import org.standoff.kit.Sql;
import org.standoff.kit.Transactions;

/** The houses that lend. */
@ApplicationScoped
public class Houses {

  private final Transactions transactions;
  private final List<ChangedTerms> listeners;

  Houses(Transactions transactions, @All List<ChangedTerms> listeners) {
    this.transactions = transactions;
    this.listeners = listeners;
  }

  /** The house of that id, if there is one. */
  public Optional<HouseTerms> find(String id) {
    return transactions.statements(connection -> HouseRows.find(connection, id));
  }

  /**
   * The house of that id.
   *
   * @throws UnknownHouse where there is none
   */
  public HouseTerms get(String id) {
    return find(id).orElseThrow(() -> unknown(id));
  }

  /** Those of these ids that there are, in the order of their ids. */
  public List<HouseTerms> named(Collection<String> ids) {
    // no id has a zero character, and PostgreSQL takes no text that does
    String[] possible = ids.stream().filter(id -> id.indexOf('\0') < 0).toArray(String[]::new);
    return transactions.statements(connection -> HouseRows.named(connection, possible));
  }

  /** All of them, in the order of their ids. */
  public List<HouseTerms> list() {
    return transactions.statements(HouseRows::all);
  }

  /**
   * Gives a house its terms, and makes it where it is new. The same terms again change nothing.
   * Holds that stand keep the periods that they were promised; those that wait may move up.
   *
   * @param caller who changes it, for the audit
   * @param wanted the terms; their revision counts for nothing
   * @param supposed asked before anything changes
   * @throws CurrencyInUse where it has units, and would charge in another currency
   */
  public Put<HouseTerms> put(Caller caller, HouseTerms wanted, Precondition supposed) {
    return transactions.statements(
        caller,
        connection -> {
          // one that is new has no row to lock
          Sql.list(
              connection,
              "select pg_advisory_xact_lock(hashtextextended('house ' || ?, 0))",
              row -> true,
              wanted.id());
          @Nullable HouseTerms known = HouseRows.lock(connection, wanted.id()).orElse(null);
          supposed.check(known == null ? OptionalLong.empty() : OptionalLong.of(known.revision()));
          if (known != null && known.withRevision(0).equals(wanted.withRevision(0))) {
            return new Put<>(known, false);
          }
          if (known != null && !known.currency().equals(wanted.currency())) {
            refuseWhereUnitsHaveRates(connection, known, wanted);
          }
          HouseTerms now = HouseRows.write(connection, wanted);
          if (known != null) {
            for (ChangedTerms listener : listeners) {
              listener.changed(connection, wanted.id());
            }
          }
          return new Put<>(now, known == null);
        });
  }

  private static void refuseWhereUnitsHaveRates(
      Connection connection, HouseTerms known, HouseTerms wanted) throws SQLException {
    if (Sql.first(connection, "select from unit where house = ? limit 1", row -> true, known.id())
        .isPresent()) {
      throw new CurrencyInUse(known.currency(), wanted.currency());
    }
  }

  private UnknownHouse unknown(String id) {
    List<String> known = list().stream().map(HouseTerms::id).toList();
    return new UnknownHouse(id, NearMiss.of(id, known));
  }
}
