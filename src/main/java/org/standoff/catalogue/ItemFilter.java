package org.standoff.catalogue;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.BiPredicate;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * Narrows a list of items by one named value.
 *
 * @param <T> the record of the kind
 * @param name of the parameter, with the unit last
 * @param words the values that it takes; empty where it takes a number
 * @param reader turns the value into a test of a record; empty where it can't be read
 */
public record ItemFilter<T>(
    String name, List<String> words, Function<String, Optional<Predicate<T>>> reader) {

  /** A filter that takes one of a list of words. */
  public static <T, W> ItemFilter<T> word(
      String name, Collection<W> constants, Function<W, String> spelling, BiPredicate<T, W> keeps) {
    return new ItemFilter<>(
        name,
        constants.stream().map(spelling).toList(),
        text ->
            constants.stream()
                .filter(constant -> spelling.apply(constant).equals(text))
                .findFirst()
                .map(constant -> value -> keeps.test(value, constant)));
  }

  /** A filter that takes a finite number. */
  public static <T> ItemFilter<T> number(String name, BiPredicate<T, Double> keeps) {
    return new ItemFilter<>(
        name, List.of(), text -> finite(text).map(limit -> value -> keeps.test(value, limit)));
  }

  /** What may be given, for people. */
  public String allowed() {
    return words.isEmpty() ? "a number" : String.join(", ", words);
  }

  private static Optional<Double> finite(String text) {
    try {
      double number = Double.parseDouble(text);
      return Double.isFinite(number) ? Optional.of(number) : Optional.empty();
    } catch (NumberFormatException notANumber) {
      return Optional.empty();
    }
  }
}
