package org.standoff.answers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import java.util.function.Consumer;

/** Reads items that come with a question, in the form of their catalogue files. */
public interface InlineItems {

  /** The word for one item of a type: {@code microphone}. */
  String kindName(Class<?> type);

  /**
   * Reads an item.
   *
   * @param type the record that the kind describes
   * @param node the item
   * @param pointer where it stands in the question
   * @param faults where every fault goes; the result is empty where there was one
   */
  <T> Optional<T> read(
      Class<T> type, JsonNode node, String pointer, Consumer<QuestionFault> faults);
}
