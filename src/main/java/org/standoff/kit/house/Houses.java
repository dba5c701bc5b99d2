package org.standoff.kit.house;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.persistence.LockModeType;
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

  Houses(Transactions transactions) {
    this.transactions = transactions;
  }

  /** The house of that id, if there is one. */
  public Optional<HouseTerms> find(String id) {
    return transactions.run(() -> House.<House>findByIdOptional(id).map(House::terms));
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
    List<String> possible = ids.stream().filter(id -> id.indexOf('\0') < 0).toList();
    return transactions.run(
        () ->
            House.<House>list("id in ?1 order by id", possible).stream()
                .map(House::terms)
                .toList());
  }

  /** All of them, in the order of their ids. */
  public List<HouseTerms> list() {
    return transactions.run(
        () -> House.<House>list("order by id").stream().map(House::terms).toList());
  }

  /**
   * Gives a house its terms, and makes it where it is new. The same terms again change nothing.
   *
   * @param caller who changes it, for the audit
   * @param wanted the terms; their revision counts for nothing
   * @param supposed asked before anything changes
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
          @Nullable House known = House.findById(wanted.id(), LockModeType.PESSIMISTIC_WRITE);
          supposed.check(known == null ? OptionalLong.empty() : OptionalLong.of(known.revision));
          House house = known == null ? House.named(wanted.id()) : known;
          if (known == null || !known.terms().withRevision(0).equals(wanted.withRevision(0))) {
            house.take(wanted);
            house.persist();
          }
          return new Put<>(house.terms(), known == null);
        });
  }

  private UnknownHouse unknown(String id) {
    List<String> known = list().stream().map(HouseTerms::id).toList();
    return new UnknownHouse(id, NearMiss.of(id, known));
  }
}
