package org.standoff.kit.hold;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
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

  private static final String AT_HOUSE =
      "exists (select from hold_line l where l.hold = hold.id and l.house = ?)";

  /**
   * The end of a statement that finds them, with its values.
   *
   * @param text from {@code where} on
   * @param values one for each of its places
   */
  record Statement(String text, List<Object> values) {}

  /**
   * Those that a caller may see, in the order of their ids. Only what matters stands in the
   * statement, so that its indexes are of use.
   */
  Statement statement(Caller caller, Optional<UUID> after, int most) {
    List<String> conditions = new ArrayList<>();
    List<Object> values = new ArrayList<>();
    if (!caller.isAdmin()) {
      conditions.add(seen(caller, values));
    }
    add(house, AT_HOUSE, conditions, values);
    add(reference, "reference = ?", conditions, values);
    add(state.map(HoldState::spelt), "state = ?", conditions, values);
    add(from, "held_to > ?", conditions, values);
    add(to, "held_from < ?", conditions, values);
    add(after, "id > ?", conditions, values);
    values.add(most);
    String where = conditions.isEmpty() ? "" : "where " + String.join(" and ", conditions);
    return new Statement(where + " order by id limit ?", values);
  }

  private static String seen(Caller caller, List<Object> values) {
    List<String> ways = new ArrayList<>();
    if (caller.roles().contains(Role.BOOKER)) {
      ways.add("desk = ?");
      values.add(caller.subject());
    }
    if (caller.roles().contains(Role.PUBLISHER) && caller.house().isPresent()) {
      ways.add(AT_HOUSE);
      values.add(caller.house().get());
    }
    return ways.isEmpty() ? "false" : "(" + String.join(" or ", ways) + ")";
  }

  private static void add(
      Optional<?> wanted, String condition, List<String> conditions, List<Object> values) {
    wanted.ifPresent(
        value -> {
          conditions.add(condition);
          values.add(value);
        });
  }
}
