package org.standoff.launch;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * What the command {@code token} is asked for.
 *
 * @param role publisher, booker or admin
 * @param house of a publisher, and of nobody else
 * @param subject who bears the token: 1 to 100 letters, digits and {@code . _ @ : -}
 * @param days for how long it holds, 1 to 366
 */
record TokenOptions(String role, Optional<String> house, String subject, int days) {

  static final String USAGE =
      """
      Usage: java -jar quarkus-run.jar token --role ROLE [--house ID] [--subject NAME] [--days N]
        --role     publisher (of the house), booker (for the desk NAME) or admin
        --house    the house whose kit a publisher publishes, such as ostrel-hire
        --subject  who bears the token; without it the house, or the role
        --days     for how long it holds, 1 to 366; 30 without it
      Prints the token, signed with the key in the data folder (STANDOFF_DATA_FOLDER).""";

  /** Options that can't be met; the message is for the person who typed them. */
  static final class Wrong extends RuntimeException {

    private static final long serialVersionUID = 1L;

    Wrong(String reason) {
      super("token: " + reason + "\n" + USAGE);
    }
  }

  private static final String PUBLISHER = "publisher";
  private static final Set<String> ROLES = Set.of(PUBLISHER, "booker", "admin");
  private static final Set<String> NAMES = Set.of("--role", "--house", "--subject", "--days");
  private static final Pattern HOUSE = Pattern.compile("[a-z0-9][a-z0-9-]{0,63}");
  private static final Pattern SUBJECT = Pattern.compile("[A-Za-z0-9._@:-]{1,100}");
  private static final int USUAL_DAYS = 30;
  private static final int MOST_DAYS = 366;

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
    String subject = Objects.requireNonNullElse(given.get("--subject"), house.orElse(role));
    if (!SUBJECT.matcher(subject).matches()) {
      throw new Wrong("--subject must be 1 to 100 letters, digits and . _ @ : -");
    }
    return new TokenOptions(role, house, subject, days(given.get("--days")));
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

  private static int days(String word) {
    if (word == null) {
      return USUAL_DAYS;
    }
    if (word.matches("[0-9]{1,3}")) {
      int days = Integer.parseInt(word);
      if (days >= 1 && days <= MOST_DAYS) {
        return days;
      }
    }
    throw new Wrong("--days must be a whole number from 1 to " + MOST_DAYS + ".");
  }
}
