package org.standoff.kit.house;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
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

  /** Those of these ids that there are, in the order of their ids. */
  public List<HouseTerms> named(Collection<String> ids) {
    return transactions.run(
        () -> House.<House>list("id in ?1 order by id", ids).stream().map(House::terms).toList());
  }

  /** All of them, in the order of their ids. */
  public List<HouseTerms> list() {
    return transactions.run(
        () -> House.<House>list("order by id").stream().map(House::terms).toList());
  }
}
