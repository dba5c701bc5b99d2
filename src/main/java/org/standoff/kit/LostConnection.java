package org.standoff.kit;

import java.sql.SQLException;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.Set;
import java.util.function.Predicate;

/** Tells a database that is gone from one that refuses. */
final class LostConnection {

  /**
   * PostgreSQL, appendix A: 08 connection exception; 53 too few resources, as disk, memory or
   * connections; 57P01 to 57P05 server stopped, crashed, not ready, database dropped, session
   * ended; 57014 statement cancelled by its time-out; 58030 its files can't be read or written;
   * 25P03, 25P04 session ended by a time-out.
   */
  private static final Set<String> STATES = Set.of("57014", "58030", "25P03", "25P04");

  private static final String DISK_FULL = "53100";
  private static final String RESOURCES_CLASS = "53";

  private static final String CONNECTION_CLASS = "08";
  private static final String OPERATOR_CLASS = "57P";

  /** What the connection pool throws when none came free in time, which has no state. */
  private static final String POOL = "io.agroal";

  private LostConnection() {}

  /** Whether the failure, or anything that led to it, is the loss of the server. */
  static boolean isBehind(Throwable failure) {
    return isBehind(failure, LostConnection::isLoss, newSet());
  }

  /** Whether the server has no room left for what is to be stored. */
  static boolean isFull(Throwable failure) {
    return isBehind(failure, sql -> DISK_FULL.equals(sql.getSQLState()), newSet());
  }

  private static Set<Throwable> newSet() {
    return Collections.newSetFromMap(new IdentityHashMap<>());
  }

  private static boolean isBehind(
      Throwable failure, Predicate<SQLException> wanted, Set<Throwable> seen) {
    if (failure == null || !seen.add(failure)) {
      return false;
    }
    if (failure instanceof SQLException sql && wanted.test(sql)) {
      return true;
    }
    for (Throwable beside : failure.getSuppressed()) {
      if (isBehind(beside, wanted, seen)) {
        return true;
      }
    }
    return isBehind(failure.getCause(), wanted, seen);
  }

  private static boolean isLoss(SQLException failure) {
    String state = failure.getSQLState();
    if (state == null) {
      StackTraceElement[] trace = failure.getStackTrace();
      return trace.length > 0 && trace[0].getClassName().startsWith(POOL);
    }
    return state.startsWith(CONNECTION_CLASS)
        || state.startsWith(OPERATOR_CLASS)
        || state.startsWith(RESOURCES_CLASS)
        || STATES.contains(state);
  }
}
