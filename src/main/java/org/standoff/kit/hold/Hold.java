package org.standoff.kit.hold;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Stream;
import org.standoff.kit.Caller;
import org.standoff.kit.Model;
import org.standoff.kit.Period;

/**
 * A hold as it stands.
 *
 * @param id of its own; later ones sort behind earlier ones
 * @param desk who holds
 * @param reference the desk's own name for it
 * @param period from collection to return
 * @param state how it stands
 * @param expiresAt when it falls unless it is confirmed; a waiting one when its period begins
 * @param madeAt when it was made, which is its place in the line of those who wait
 * @param changedAt when it changed last
 * @param revision counts its changes, from 1
 * @param lines what was wanted, with the units that were promised for it
 */
public record Hold(
    UUID id,
    String desk,
    String reference,
    Period period,
    HoldState state,
    Optional<Instant> expiresAt,
    Instant madeAt,
    Instant changedAt,
    long revision,
    List<HeldLine> lines) {

  public Hold {
    lines = List.copyOf(lines);
  }

  /** All its units, line by line. */
  public Stream<HeldUnit> units() {
    return lines.stream().flatMap(line -> line.units().stream());
  }

  /** The models of its lines. */
  List<Model> models() {
    return lines.stream().map(line -> line.wanted().model()).distinct().toList();
  }

  /**
   * As much of it as a caller may see: a desk its own, a house the lines on its units, nobody
   * anything else.
   */
  public Optional<Hold> seenBy(Caller caller) {
    if (caller.booksFor(desk)) {
      return Optional.of(this);
    }
    List<HeldLine> theirs =
        lines.stream().filter(line -> caller.publishesFor(line.wanted().house())).toList();
    return theirs.isEmpty() ? Optional.empty() : Optional.of(withLines(theirs));
  }

  private Hold withLines(List<HeldLine> some) {
    return new Hold(
        id, desk, reference, period, state, expiresAt, madeAt, changedAt, revision, some);
  }
}
