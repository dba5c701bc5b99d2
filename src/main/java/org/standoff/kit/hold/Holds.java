package org.standoff.kit.hold;

import jakarta.enterprise.context.ApplicationScoped;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import org.standoff.kit.Caller;
import org.standoff.kit.ModelLocks;
import org.standoff.kit.NotPermitted;
import org.standoff.kit.Role;
import org.standoff.kit.Sql;

/** Makes holds and reads them. */
@ApplicationScoped
public class Holds {

  private final Ledger ledger;
  private final Attempts attempts;
  private final Expiry expiry;
  private final Handovers handovers;

  Holds(Ledger ledger, Attempts attempts, Expiry expiry, Handovers handovers) {
    this.ledger = ledger;
    this.attempts = attempts;
    this.expiry = expiry;
    this.handovers = handovers;
  }

  /**
   * Holds all that is wanted, or nothing, and once, however often it is asked. Where units are
   * short and the wish may wait, it becomes a second hold.
   *
   * @throws WishRefused where no stock could meet it
   * @throws Shortage where units are short and it may not wait
   * @throws ReferenceTaken where the desk has a hold of that reference
   * @throws KeyReused where the key came with another body before
   * @throws KeyBusy while a request with the key is being answered
   */
  public Receipt holdOnce(Caller caller, HoldWish wish, Retry retry) {
    mustBook(caller);
    return ledger.change(
        caller.subject(),
        (connection, now) -> {
          Optional<Receipt> before = IdempotencyKeys.claim(connection, caller.subject(), retry);
          if (before.isPresent()) {
            return before.get();
          }
          Hold hold = make(connection, now, caller, wish, true);
          return IdempotencyKeys.keep(connection, caller.subject(), retry, hold, now);
        });
  }

  /** What {@link #holdOnce} would hold now; nothing is held. */
  public Hold rehearse(Caller caller, HoldWish wish) {
    mustBook(caller);
    return ledger.change(
        caller.subject(), (connection, now) -> make(connection, now, caller, wish, false));
  }

  /**
   * A hold, as much of it as the caller may see.
   *
   * @throws HoldUnknown where that is nothing
   */
  public Hold find(Caller caller, UUID id) {
    expiry.settleIfDue();
    return attempts
        .run(connection -> HoldRows.find(connection, id))
        .flatMap(hold -> hold.seenBy(caller))
        .orElseThrow(HoldUnknown::new);
  }

  /**
   * Holds that the caller may see, in the order of their ids, which is the order in which they were
   * made.
   *
   * @param after the id to begin behind
   * @param most how many
   */
  public List<Hold> list(Caller caller, HoldSearch search, Optional<UUID> after, int most) {
    expiry.settleIfDue();
    HoldSearch.Statement statement = search.statement(caller, after, most);
    return attempts
        .run(
            connection -> HoldRows.list(connection, statement.text(), statement.values().toArray()))
        .stream()
        .flatMap(hold -> hold.seenBy(caller).stream())
        .toList();
  }

  private Hold make(
      Connection connection, Instant now, Caller caller, HoldWish wish, boolean forGood)
      throws SQLException {
    HoldPeriods.check(wish.period(), now);
    Map<String, Handover> houses = handovers.forWish(wish.lines(), wish.period());
    refuseKnownReference(connection, caller.subject(), wish.reference());
    ModelLocks.take(connection, wish.lines().stream().map(WantedLine::model).toList());
    Promise promise = Promise.seek(connection, wish.lines(), houses, wish.period());
    boolean waits = !promise.isWhole();
    if (waits && !(wish.second() && wish.period().from().isAfter(now))) {
      throw new Shortage(wish.period(), wish.lines(), promise.shortfalls());
    }
    Promise given = waits ? Promise.none(wish.lines().size()) : promise;
    Hold hold =
        new Hold(
            HoldId.at(now),
            caller.subject(),
            wish.reference(),
            wish.period(),
            waits ? HoldState.WAITING : HoldState.TENTATIVE,
            Optional.of(waits ? wish.period().from() : now.plus(wish.lifetime())),
            now,
            now,
            1,
            given.lines(wish.lines()));
    if (forGood) {
      HoldRows.insert(connection, hold, wish.lifetime(), given);
    }
    return hold;
  }

  private static void refuseKnownReference(Connection connection, String desk, String reference)
      throws SQLException {
    Optional<UUID> known =
        Sql.first(
            connection,
            "select id from hold where desk = ? and reference = ?",
            row -> row.getObject("id", UUID.class),
            desk,
            reference);
    if (known.isPresent()) {
      throw new ReferenceTaken(reference, known.get());
    }
  }

  private static void mustBook(Caller caller) {
    if (!caller.roles().contains(Role.BOOKER) && !caller.isAdmin()) {
      throw new NotPermitted("The token does not let its bearer hold anything.");
    }
  }
}
