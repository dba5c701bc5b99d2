package org.standoff.catalogue.load;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.NullNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.Event.ID;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Builds one tree from the parser's events, so that nothing is built which is not wanted, and tells
 * every fault on the way. For one file.
 */
final class YamlTree {

  /** Shipped files are five deep. */
  private static final int DEEPEST = 32;

  /** Nobody mends more than these in one go. */
  private static final int MOST_FAULTS = 100;

  private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

  private final List<Integer> lines = new ArrayList<>();
  private final List<ReadFault> faults = new ArrayList<>();
  private Parser parser;

  /** Ends the reading of a file whose rest is not worth a look. */
  private static final class Enough extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Enough() {
      super(null, null, false, false);
    }
  }

  Document read(String text) {
    parser = new ParserImpl(new StreamReader(text), new LoaderOptions());
    JsonNode root = NullNode.getInstance();
    try {
      parser.getEvent(); // start of the stream
      if (parser.checkEvent(ID.StreamEnd)) {
        lines.add(1);
        fault(1, "", "nothing", "an item");
      } else {
        parser.getEvent(); // start of the document
        Event first = parser.getEvent();
        root = node(first, "", line(first), 1);
        parser.getEvent(); // its end
        if (!parser.checkEvent(ID.StreamEnd)) {
          fault(line(parser.peekEvent()), "", "a second document", "one item a file");
        }
      }
    } catch (Enough told) {
      root = NullNode.getInstance();
    }
    return new Document(root, new Lines(root, toArray(lines)), faults);
  }

  private JsonNode node(Event event, String pointer, int line, int depth) {
    lines.add(line);
    if (event instanceof AliasEvent alias) {
      fault(line, pointer, "*" + alias.getAnchor(), "the value itself: aliases are not read");
      return NullNode.getInstance();
    }
    if (depth > DEEPEST) {
      fault(line, pointer, "more than " + DEEPEST + " levels", "a flatter file");
      throw new Enough();
    }
    if (((NodeEvent) event).getAnchor() != null) {
      String anchor = "&" + ((NodeEvent) event).getAnchor();
      fault(line, pointer, anchor, "the value without an anchor: aliases are not read");
    }
    if (event instanceof ScalarEvent scalar) {
      return scalar(scalar, pointer, line);
    }
    String tag = ((CollectionStartEvent) event).getTag();
    if (tag != null) {
      fault(line, pointer, tag, "the value without a tag");
    }
    return event.is(ID.SequenceStart) ? sequence(pointer, depth) : mapping(pointer, depth);
  }

  private ArrayNode sequence(String pointer, int depth) {
    ArrayNode list = NODES.arrayNode();
    for (Event event = parser.getEvent(); !event.is(ID.SequenceEnd); event = parser.getEvent()) {
      list.add(node(event, pointer + "/" + list.size(), line(event), depth + 1));
    }
    return list;
  }

  private ObjectNode mapping(String pointer, int depth) {
    ObjectNode object = NODES.objectNode();
    for (Event event = parser.getEvent(); !event.is(ID.MappingEnd); event = parser.getEvent()) {
      int line = line(event);
      if (!(event instanceof ScalarEvent name)) {
        fault(line, pointer, "a name that is no text", "a plain name");
        throw new Enough();
      }
      String key = name.getValue();
      String place = pointer + "/" + key.replace("~", "~0").replace("/", "~1");
      int before = lines.size();
      JsonNode value = node(parser.getEvent(), place, line, depth + 1);
      if (object.has(key)) {
        fault(line, place, "'" + key + "' a second time", "each name once");
        lines.subList(before, lines.size()).clear();
      } else {
        object.set(key, value);
      }
    }
    return object;
  }

  private JsonNode scalar(ScalarEvent scalar, String pointer, int line) {
    if (scalar.getTag() != null) {
      fault(line, pointer, scalar.getTag(), "the value without a tag");
    }
    String text = scalar.getValue();
    if (scalar.getScalarStyle() == ScalarStyle.PLAIN) {
      return PlainScalar.read(text)
          .orElseGet(
              () -> {
                fault(line, pointer, text, "a finite number of at most 64 characters");
                return NODES.numberNode(0);
              });
    }
    if (!isWellFormed(text)) {
      fault(line, pointer, "half of a surrogate pair", "whole characters");
    }
    return NODES.textNode(text);
  }

  private void fault(int line, String pointer, String found, String expected) {
    faults.add(new ReadFault(line, pointer, found, expected));
    if (faults.size() >= MOST_FAULTS) {
      throw new Enough();
    }
  }

  private static boolean isWellFormed(String text) {
    return text.codePoints().noneMatch(point -> Character.getType(point) == Character.SURROGATE);
  }

  private static int line(Event event) {
    return event.getStartMark().getLine() + 1;
  }

  private static int[] toArray(List<Integer> lines) {
    return lines.stream().flatMapToInt(IntStream::of).toArray();
  }
}
