package org.standoff.catalogue.load;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What an unquoted value means: the core schema of YAML 1.2.2, section 10.3.2, without its octal
 * and hexadecimal numbers, which no catalogue needs.
 */
final class PlainScalar {

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;
  private static final Pattern NOTHING = Pattern.compile("null|Null|NULL|~|");
  private static final Pattern TRUTH = Pattern.compile("true|True|TRUE|false|False|FALSE");
  private static final Pattern WHOLE = Pattern.compile("[-+]?[0-9]+");
  private static final Pattern NUMBER =
      Pattern.compile("[-+]?(\\.[0-9]+|[0-9]+(\\.[0-9]*)?)([eE][-+]?[0-9]+)?");
  private static final Pattern NOT_FINITE =
      Pattern.compile("[-+]?(\\.inf|\\.Inf|\\.INF)|\\.nan|\\.NaN|\\.NAN");
  private static final int LONGEST_NUMBER = 64;
  private static final int MOST_INT_DIGITS = 9;

  private PlainScalar() {}

  /** The value; empty where it is a number that is not finite or absurdly long. */
  static Optional<JsonNode> read(String text) {
    if (NOTHING.matcher(text).matches()) {
      return Optional.of(NODES.nullNode());
    }
    if (TRUTH.matcher(text).matches()) {
      return Optional.of(NODES.booleanNode(text.charAt(0) == 't' || text.charAt(0) == 'T'));
    }
    if (NOT_FINITE.matcher(text).matches()) {
      return Optional.empty();
    }
    boolean whole = WHOLE.matcher(text).matches();
    if (!whole && !NUMBER.matcher(text).matches()) {
      return Optional.of(NODES.textNode(text));
    }
    if (text.length() > LONGEST_NUMBER) {
      return Optional.empty();
    }
    if (whole && text.length() <= MOST_INT_DIGITS) {
      return Optional.of(NODES.numberNode(Integer.parseInt(text)));
    }
    double number = Double.parseDouble(text);
    return Double.isFinite(number) ? Optional.of(NODES.numberNode(number)) : Optional.empty();
  }
}
