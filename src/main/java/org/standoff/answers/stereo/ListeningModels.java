package org.standoff.answers.stereo;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.answers.Assumptions;
import org.standoff.answers.QuestionFault;
import org.standoff.answers.References;
import org.standoff.answers.Resolved;
import org.standoff.pairs.listening.ListeningModel;

/** Resolves the listening models of a question. */
final class ListeningModels {
  /** Its note recommends it for recording angles. */
  private static final String USUAL_CRITERION = "core/limit-polyline";

  /** Its note recommends it for image positions, so it comes first. */
  private static final String USUAL_FIRST = "core/two-region";

  private ListeningModels() {}

  /** Those that are asked for, in their order; else all, the recommended one first. */
  static List<ListeningModel> resolve(
      References references, @Nullable List<JsonNode> asked, Assumptions assumptions) {
    if (asked == null) {
      assumptions.add("all listening models of the catalogue are asked");
      return references.all(ListeningModel.class, null, "/models").stream()
          .sorted(
              Comparator.comparing((ListeningModel one) -> !one.study().id().equals(USUAL_FIRST))
                  .thenComparing(one -> one.study().id()))
          .toList();
    }
    // the same model named twice is one model
    Map<String, ListeningModel> found = new LinkedHashMap<>();
    for (int i = 0; i < asked.size(); i++) {
      references
          .resolve(ListeningModel.class, asked.get(i), "/models/" + i)
          .ifPresent(one -> found.put(one.id(), one.item()));
    }
    return List.copyOf(found.values());
  }

  /** As {@link #resolve}; at least one of them must place images. */
  static List<ListeningModel> placing(
      References references, @Nullable List<JsonNode> asked, Assumptions assumptions) {
    List<ListeningModel> models = resolve(references, asked, assumptions);
    if (!models.isEmpty() && models.stream().noneMatch(ListeningModel::placesImages)) {
      references.fault(
          QuestionFault.of(
                  "/models",
                  QuestionFault.Kind.CONTRADICTION,
                  "None of these models places images: they only tell where the side is reached.")
              .allowed("at least one that places images, as " + USUAL_FIRST));
    }
    return models;
  }

  /** Whose limit gives the recording angle. */
  static Optional<ListeningModel> criterion(References references, @Nullable JsonNode asked) {
    Optional<Resolved<ListeningModel>> found =
        asked == null
            ? references.byId(ListeningModel.class, USUAL_CRITERION, "/criterion")
            : references.resolve(ListeningModel.class, asked, "/criterion");
    return found.map(Resolved::item);
  }
}
