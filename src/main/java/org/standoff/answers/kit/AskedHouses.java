package org.standoff.answers.kit;

import jakarta.enterprise.context.ApplicationScoped;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.catalogue.NearMiss;
import org.standoff.kit.house.HouseTerms;
import org.standoff.kit.house.Houses;

/** Resolves the houses that a question names. */
@ApplicationScoped
public class AskedHouses {
  /** No question looks at more. */
  static final int MOST = 20;

  private final Houses houses;

  AskedHouses(Houses houses) {
    this.houses = houses;
  }

  /**
   * The houses in the order in which they are named; all where none is. Notes a fault for each that
   * there is not, and where there are too many to ask them all.
   *
   * @param pointer where the names stand in the question
   */
  public List<HouseTerms> resolve(
      References references, @Nullable List<String> names, String pointer) {
    if (names == null) {
      List<HouseTerms> all = houses.list();
      if (all.size() > MOST) {
        references.fault(
            QuestionFault.of(
                    pointer,
                    QuestionFault.Kind.MISSING,
                    "There are too many houses to ask them all: say which.")
                .found(all.size())
                .allowed("at most " + MOST + " houses"));
        return List.of();
      }
      return all;
    }
    Set<String> distinct = new LinkedHashSet<>(names);
    Map<String, HouseTerms> found =
        houses.named(distinct).stream()
            .collect(Collectors.toMap(HouseTerms::id, Function.identity()));
    List<HouseTerms> resolved = new ArrayList<>();
    for (String name : distinct) {
      if (found.containsKey(name)) {
        resolved.add(found.get(name));
      } else {
        references.fault(unknown(name, pointer + "/" + names.indexOf(name)));
      }
    }
    return resolved;
  }

  private QuestionFault unknown(String name, String pointer) {
    List<String> known = houses.list().stream().map(HouseTerms::id).toList();
    return QuestionFault.of(
            pointer, QuestionFault.Kind.UNKNOWN_ITEM, "There is no house of this id.")
        .found(name)
        .suggestion(NearMiss.of(name, known));
  }
}
