package org.standoff.kit.hold;

import java.time.Instant;
import java.util.Optional;
import java.util.UUID;
import org.standoff.kit.Caller;
import org.standoff.kit.Role;

/**
 * Which holds are wanted; what is empty does not matter.
 *
 * @param house with a line at this house
 * @param reference of this reference
 * @param state that stand so
 * @param from that are not over by then
 * @param to that begin before then
 */
public record HoldSearch(
    Optional<String> house,
    Optional<String> reference,
    Optional<HoldState> state,
    Optional<Instant> from,
    Optional<Instant> to) {

  static final String STATEMENT =
      """
      where (?::boolean or desk = ?::text
             or exists (select from hold_line l where l.hold = hold.id and l.house = ?::text))
        and (?::text is null
             or exists (select from hold_line l where l.hold = hold.id and l.house = ?::text))
        and (?::text is null or reference = ?::text)
        and (?::text is null or state = ?::text)
        and (?::timestamptz is null or held_to > ?::timestamptz)
        and (?::timestamptz is null or held_from < ?::timestamptz)
        and (?::uuid is null or id > ?::uuid)
      order by id
      limit ?
      """;

  Object[] values(Caller caller, Optional<UUID> after, int most) {
    Optional<String> desk =
        Optional.of(caller.subject()).filter(any -> caller.roles().contains(Role.BOOKER));
    Optional<String> publishes =
        caller.house().filter(any -> caller.roles().contains(Role.PUBLISHER));
    Optional<String> spelt = state.map(HoldState::spelt);
    return new Object[] {
      caller.isAdmin(),
      desk,
      publishes,
      house,
      house,
      reference,
      reference,
      spelt,
      spelt,
      from,
      from,
      to,
      to,
      after,
      after,
      most
    };
  }
}
