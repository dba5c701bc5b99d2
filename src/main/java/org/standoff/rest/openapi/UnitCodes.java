package org.standoff.rest.openapi;

import java.util.Optional;
import java.util.Properties;

/**
 * The unit of a member by its name, as a code of the Unified Code for Units of Measure (UCUM). The
 * codes stand in {@code openapi/units.properties}.
 */
final class UnitCodes {
  static final String RESOURCE = "/openapi/units.properties";
  private static final char WORDS = '_';

  private final Properties codes = PropertiesFile.read(RESOURCE);

  /**
   * The code of a number.
   *
   * @param record the schema that it belongs to; a parameter belongs to none and has an empty one
   * @param name in snake case
   * @return {@code 1} for a pure number; empty where its unit is told elsewhere
   * @throws IllegalArgumentException where nothing is known of it
   */
  Optional<String> of(String record, String name) {
    Optional<String> known = find(record, name);
    if (known.isEmpty()) {
      throw new IllegalArgumentException(
          "%s has no unit for the number %s of %s".formatted(RESOURCE, name, record));
    }
    return known.filter(UnitCodes::isTold);
  }

  /** The code of what may be no number: empty where its name ends in no unit. */
  Optional<String> ofMeasure(String record, String name) {
    return byLastWords(name).flatMap(measure -> find(record, name)).filter(UnitCodes::isTold);
  }

  private static boolean isTold(String code) {
    return !code.isEmpty();
  }

  private Optional<String> find(String record, String name) {
    return Optional.ofNullable(codes.getProperty(record + "." + name))
        .or(() -> Optional.ofNullable(codes.getProperty(name)))
        .or(() -> byLastWords(name));
  }

  private Optional<String> byLastWords(String name) {
    for (int at = name.indexOf(WORDS); at >= 0; at = name.indexOf(WORDS, at + 1)) {
      String code = codes.getProperty(name.substring(at));
      if (code != null) {
        return Optional.of(code);
      }
    }
    return Optional.empty();
  }
}
