package org.standoff.shipped;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.StreamSupport;

/** An item file of a shipped pack, read without the service's own loader. */
public record ShippedFile(Path path, String pack, String kind, String id, JsonNode content) {

  public JsonNode at(String pointer) {
    return content.at(pointer);
  }

  public double number(String pointer) {
    JsonNode value = at(pointer);
    if (!value.isNumber()) {
      throw new AssertionError(path + " has no number at " + pointer);
    }
    return value.doubleValue();
  }

  /** The children of the node there; none when there is no such node. */
  public List<JsonNode> each(String pointer) {
    return StreamSupport.stream(at(pointer).spliterator(), false).toList();
  }

  @Override
  public String toString() {
    return path.toString();
  }
}
