package org.standoff.answers;

import com.fasterxml.jackson.databind.JsonNode;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;
import java.util.function.Consumer;
import org.standoff.catalogue.ItemId;
import org.standoff.catalogue.load.InlineSheets;

/** Reads items that come with a question, in the form of their catalogue files. */
@ApplicationScoped
public class InlineItems {
  private final InlineSheets sheets;

  InlineItems(InlineSheets sheets) {
    this.sheets = sheets;
  }

  /** The word for one item of a type: {@code microphone}. */
  String kindName(Class<?> type) {
    return sheets.kindName(type);
  }

  /**
   * Reads an item.
   *
   * @param type the record that the kind describes
   * @param id what it is called in the answer
   * @param node the item
   * @param pointer where it stands in the question
   * @param faults where every fault goes; the result is empty where there was one
   */
  <T> Optional<T> read(
      Class<T> type, ItemId id, JsonNode node, String pointer, Consumer<QuestionFault> faults) {
    return sheets.read(
        type,
        id,
        node,
        fault ->
            faults.accept(
                QuestionFault.of(
                        pointer + fault.pointer(),
                        QuestionFault.Kind.WRONG_FORM,
                        "The item does not have the form of a " + kindName(type) + " file.")
                    .found(fault.found())
                    .allowed(fault.expected())));
  }
}
