package org.standoff.catalogue;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;

/**
 * What a file says, as a reader asks for it. The file has passed its schema, so what must be there
 * is there and has its type. What a record still refuses is told with its place.
 */
public final class Sheet {

  private final JsonNode node;
  private final String pointer;

  /** The whole of a file. */
  public Sheet(JsonNode node) {
    this(node, "");
  }

  private Sheet(JsonNode node, String pointer) {
    this.node = node;
    this.pointer = pointer;
  }

  public boolean has(String name) {
    return node.has(name);
  }

  public String text(String name) {
    return node.path(name).asText();
  }

  public Optional<String> optionalText(String name) {
    return has(name) ? Optional.of(text(name)) : Optional.empty();
  }

  public double number(String name) {
    return node.path(name).asDouble();
  }

  public OptionalDouble optionalNumber(String name) {
    return has(name) ? OptionalDouble.of(number(name)) : OptionalDouble.empty();
  }

  public int whole(String name) {
    return node.path(name).asInt();
  }

  /** Absent is false. */
  public boolean flag(String name) {
    return node.path(name).asBoolean();
  }

  /** The constant that the word under {@code name} spells. */
  public <E> E word(String name, Function<String, Optional<E>> constants) {
    return within(
        place(name),
        () ->
            constants
                .apply(text(name))
                .orElseThrow(
                    () -> new IllegalArgumentException("'" + text(name) + "' is not known here")));
  }

  public List<String> texts(String name) {
    List<String> texts = new ArrayList<>();
    node.path(name).forEach(entry -> texts.add(entry.asText()));
    return texts;
  }

  public List<Double> numbers(String name) {
    List<Double> numbers = new ArrayList<>();
    node.path(name).forEach(entry -> numbers.add(entry.asDouble()));
    return numbers;
  }

  /** What stands in the object under {@code name}. */
  public <R> R object(String name, Function<Sheet, R> reader) {
    return read(node.path(name), place(name), reader);
  }

  public <R> Optional<R> optionalObject(String name, Function<Sheet, R> reader) {
    return has(name) ? Optional.of(object(name, reader)) : Optional.empty();
  }

  /** What stands in the list of objects under {@code name}; none where it is absent. */
  public <R> List<R> list(String name, Function<Sheet, R> reader) {
    List<R> list = new ArrayList<>();
    JsonNode entries = node.path(name);
    for (int i = 0; i < entries.size(); i++) {
      list.add(read(entries.get(i), place(name) + "/" + i, reader));
    }
    return list;
  }

  /** What stands in each member of the object under {@code name}, in the order of the file. */
  public <R> Map<String, R> map(String name, BiFunction<String, Sheet, R> reader) {
    Map<String, R> map = new LinkedHashMap<>();
    node.path(name)
        .properties()
        .forEach(
            entry -> {
              String key = entry.getKey();
              String place = place(name) + "/" + escaped(key);
              map.put(key, read(entry.getValue(), place, sheet -> reader.apply(key, sheet)));
            });
    return map;
  }

  /** Figures by name. */
  public Map<String, Double> figures(String name) {
    Map<String, Double> figures = new LinkedHashMap<>();
    node.path(name).properties().forEach(e -> figures.put(e.getKey(), e.getValue().asDouble()));
    return figures;
  }

  /** Figures by a word that names a constant. */
  public <E> Map<E, Double> figures(String name, Function<String, Optional<E>> constants) {
    Map<E, Double> figures = new LinkedHashMap<>();
    figures(name)
        .forEach(
            (word, figure) -> constants.apply(word).ifPresent(key -> figures.put(key, figure)));
    return figures;
  }

  /** Words by name. */
  public <E> Map<String, E> words(String name, Function<String, Optional<E>> constants) {
    Map<String, E> words = new LinkedHashMap<>();
    node.path(name)
        .properties()
        .forEach(
            e ->
                constants
                    .apply(e.getValue().asText())
                    .ifPresent(constant -> words.put(e.getKey(), constant)));
    return words;
  }

  /**
   * A figure for each octave: an octave that is not given takes the figure of the nearest given
   * one, the lower of two that are equally near.
   */
  public Optional<Octaves> octaves(String name) {
    Map<String, Double> given = figures(name);
    if (given.isEmpty()) {
      return Optional.empty();
    }
    double[] ten = new double[Octave.COUNT];
    for (Octave octave : Octave.all()) {
      ten[octave.ordinal()] = given.get(nearest(octave, given).label());
    }
    return Optional.of(Octaves.of(ten));
  }

  private static Octave nearest(Octave wanted, Map<String, Double> given) {
    Octave nearest = null;
    for (Octave octave : Octave.all()) {
      boolean nearer =
          nearest == null
              || Math.abs(octave.ordinal() - wanted.ordinal())
                  < Math.abs(nearest.ordinal() - wanted.ordinal());
      if (given.containsKey(octave.label()) && nearer) {
        nearest = octave;
      }
    }
    if (nearest == null) {
      throw new IllegalArgumentException("no octave of " + given.keySet() + " is known");
    }
    return nearest;
  }

  private String place(String name) {
    return pointer + "/" + escaped(name);
  }

  private static String escaped(String name) {
    return name.replace("~", "~0").replace("/", "~1");
  }

  private static <R> R read(JsonNode node, String place, Function<Sheet, R> reader) {
    return within(place, () -> reader.apply(new Sheet(node, place)));
  }

  private static <R> R within(String place, java.util.function.Supplier<R> work) {
    try {
      return work.get();
    } catch (SheetFault located) {
      throw located;
    } catch (IllegalArgumentException refused) {
      throw new SheetFault(place, refused);
    }
  }
}
