package org.standoff.kit.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.Set;
import org.standoff.kit.DatabaseLost;
import org.standoff.kit.StatementFailed;
import org.standoff.kit.Transactions;

/**
 * Begins a transaction anew where PostgreSQL gave it up for another's sake. Locks make that rare;
 * what is left are races between instances that no lock of ours covers, and they must not look like
 * a refusal.
 */
@ApplicationScoped
class Attempts {

  /**
   * PostgreSQL, appendix A: 40001 serialization failure, 40P01 deadlock, 23P01 exclusion violation
   * (somebody took a unit meanwhile), 23505 unique violation (the same reference or key meanwhile).
   */
  private static final Set<String> WORTH_ANOTHER = Set.of("40001", "40P01", "23P01", "23505");

  private static final String LOCK_NOT_AVAILABLE = "55P03";
  private static final int MOST = 8;

  private final Transactions transactions;

  Attempts(Transactions transactions) {
    this.transactions = transactions;
  }

  <T> T run(Transactions.Statements<T> work) {
    for (int attempt = 1; ; attempt++) {
      try {
        return transactions.statements(work);
      } catch (StatementFailed failed) {
        if (failed.state().equals(LOCK_NOT_AVAILABLE)) {
          throw new DatabaseLost("Too many want the same kit at this moment.", failed);
        }
        if (attempt == MOST || !WORTH_ANOTHER.contains(failed.state())) {
          throw failed;
        }
      }
    }
  }
}
