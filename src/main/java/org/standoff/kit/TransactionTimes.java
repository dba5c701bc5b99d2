package org.standoff.kit;

/** Learns how long work was in transactions, so that whoever waited can be told. */
@FunctionalInterface
public interface TransactionTimes {

  /**
   * A transaction is over, whatever became of it.
   *
   * @param nanos from asking for it to its end, in nanoseconds: a connection, statements, the
   *     commit
   */
  void spent(long nanos);
}
