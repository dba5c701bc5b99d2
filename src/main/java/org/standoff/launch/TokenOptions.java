package org.standoff.launch;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * What the command {@code token} is asked for.
 *
 * @param role publisher, booker or admin
 * @param house of a publisher, and of nobody else
 * @param subject who bears the token: 1 to 100 letters, digits and {@code . _ @ : -}
 * @param hours for how long it holds, 1 to 8784
 */
record TokenOptions(String role, Optional<String> house, String subject, int hours) {

  static final String USAGE =
      """
      Usage: java -jar quarkus-run.jar token --role ROLE [--house ID] [--subject NAME] [--hours N]
        --role     publisher (of the house), booker (for the desk NAME) or admin
        --house    the house whose kit a publisher publishes, such as ostrel-hire
        --subject  who bears the token; a booker's is its desk; without it the house, or admin
        --hours    for how long it holds, 1 to 8784; 24 without it
      Prints the token, signed with the key in the data folder (STANDOFF_DATA_FOLDER).""";

  /** Options that can't be met; the message is for the person who typed them. */
  static final class Wrong extends RuntimeException {

    private static final long serialVersionUID = 1L;

    Wrong(String reason) {
      super("token: " + reason + "\n" + USAGE);
    }
  }

  private static final String PUBLISHER = "publisher";
  private static final String BOOKER = "booker";
  private static final Set<String> ROLES = Set.of(PUBLISHER, BOOKER, "admin");
  private static final Set<String> NAMES = Set.of("--role", "--house", "--subject", "--hours");
  private static final Pattern HOUSE = Pattern.compile("[a-z0-9][a-z0-9-]{0,63}");
  private static final Pattern SUBJECT = Pattern.compile("[A-Za-z0-9._@:-]{1,100}");
  private static final int USUAL_HOURS = 24;
  private static final int MOST_HOURS = 366 * 24;

  /**
   * Reads the words after the command.
   *
   * @throws Wrong if one of them can't be met
   */
  static TokenOptions of(List<String> words) {
    Map<String, String> given = pairs(words);
    String role = Objects.requireNonNullElse(given.get("--role"), "");
    if (!ROLES.contains(role)) {
      throw new Wrong("--role must be publisher, booker or admin.");
    }
    Optional<String> house = Optional.ofNullable(given.get("--house"));
    if (role.equals(PUBLISHER) != house.isPresent()) {
      throw new Wrong("--house goes with the role publisher, and with no other.");
    }
    if (house.isPresent() && !HOUSE.matcher(house.get()).matches()) {
      throw new Wrong("--house must be lower case, digits and hyphens, at most 64.");
    }
    if (role.equals(BOOKER) && !given.containsKey("--subject")) {
      throw new Wrong("--subject must name the desk that a booker holds for.");
    }
    String subject = Objects.requireNonNullElse(given.get("--subject"), house.orElse(role));
    if (!SUBJECT.matcher(subject).matches()) {
      throw new Wrong("--subject must be 1 to 100 letters, digits and . _ @ : -");
    }
    return new TokenOptions(role, house, subject, hours(given.get("--hours")));
  }

  private static Map<String, String> pairs(List<String> words) {
    Map<String, String> given = new HashMap<>();
    for (int at = 0; at < words.size(); at += 2) {
      String name = words.get(at);
      if (!NAMES.contains(name)) {
        throw new Wrong("there is no option '" + name + "'.");
      }
      if (at + 1 == words.size()) {
        throw new Wrong(name + " wants a value.");
      }
      if (given.put(name, words.get(at + 1)) != null) {
        throw new Wrong(name + " is given twice.");
      }
    }
    return given;
  }

  private static int hours(@Nullable String word) {
    if (word == null) {
      return USUAL_HOURS;
    }
    if (word.matches("[0-9]{1,4}")) {
      int hours = Integer.parseInt(word);
      if (hours >= 1 && hours <= MOST_HOURS) {
        return hours;
      }
    }
    throw new Wrong("--hours must be a whole number from 1 to " + MOST_HOURS + ".");
  }
}
