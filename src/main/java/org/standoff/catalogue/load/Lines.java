package org.standoff.catalogue.load;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Iterator;

/**
 * Where the nodes of a tree stand in their file. One number a node, in document order, because
 * thousands of files are kept and few are ever asked.
 */
final class Lines {

  private final JsonNode root;
  private final int[] byOrder;

  /**
   * @param byOrder line of each node, a node before what it holds
   */
  Lines(JsonNode root, int[] byOrder) {
    this.root = root;
    this.byOrder = byOrder.clone();
  }

  /** The line of the node at {@code pointer}, or of what holds it where it is not there. */
  int of(String pointer) {
    JsonNode node = root;
    int order = 0;
    String[] names = pointer.isEmpty() ? new String[0] : pointer.substring(1).split("/", -1);
    for (String name : names) {
      int step = stepTo(node, unescaped(name));
      if (step < 0) {
        break;
      }
      order += step;
      node = child(node, unescaped(name));
    }
    return order < byOrder.length ? byOrder[order] : 0;
  }

  /** How many nodes farther the child is, in document order; −1 where there is none. */
  private static int stepTo(JsonNode node, String name) {
    if (child(node, name) == null) {
      return -1;
    }
    // by name and not by node: equal figures of a file may be one node
    Iterator<String> names = node.fieldNames();
    int step = 1;
    for (int i = 0; i < node.size(); i++) {
      String here = node.isArray() ? String.valueOf(i) : names.next();
      if (here.equals(name)) {
        break;
      }
      step += size(child(node, here));
    }
    return step;
  }

  private static JsonNode child(JsonNode node, String name) {
    if (node.isArray()) {
      boolean index = name.matches("0|[1-9]\\d{0,5}");
      return index ? node.get(Integer.parseInt(name)) : null;
    }
    return node.get(name);
  }

  private static int size(JsonNode node) {
    int size = 1;
    for (JsonNode child : node) {
      size += size(child);
    }
    return size;
  }

  private static String unescaped(String name) {
    return name.replace("~1", "/").replace("~0", "~");
  }
}
