package org.standoff.catalogue.load;

import com.fasterxml.jackson.databind.node.NullNode;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;

/**
 * Reads a file of a stranger: YAML with the values of the core schema of YAML 1.2 (section 10.3)
 * and nothing else of the language. {@code on} and {@code 1:30} are texts, not a truth and a time;
 * anchors, aliases, tags and second documents are refused, so a file can't grow when it is read.
 */
public final class YamlFile {

  /** Largest file that is read, in bytes; the largest shipped one is under a tenth of it. */
  public static final int MOST_BYTES = 256 * 1024;

  private YamlFile() {}

  /**
   * @param bytes the file, or its first {@code MOST_BYTES + 1} bytes
   */
  static Document read(byte[] bytes) {
    if (bytes.length > MOST_BYTES) {
      return broken(0, "more than " + MOST_BYTES + " bytes", "a file of one item");
    }
    String text;
    try {
      text =
          StandardCharsets.UTF_8
              .newDecoder()
              .onMalformedInput(CodingErrorAction.REPORT)
              .onUnmappableCharacter(CodingErrorAction.REPORT)
              .decode(ByteBuffer.wrap(bytes))
              .toString();
    } catch (CharacterCodingException notUtf8) {
      return broken(lineOfBadByte(bytes), "bytes that are not UTF-8", "a file in UTF-8");
    }
    YamlTree tree = new YamlTree();
    try {
      return tree.read(text);
    } catch (MarkedYAMLException malformed) {
      int line = malformed.getProblemMark() == null ? 0 : malformed.getProblemMark().getLine() + 1;
      return broken(line, malformed.getProblem(), expectation(malformed));
    } catch (YAMLException unreadable) {
      return broken(0, "a character that no YAML file has", "printable characters");
    }
  }

  private static String expectation(MarkedYAMLException malformed) {
    return malformed.getProblem().contains("TAB")
        ? "well-formed YAML, which is indented with spaces"
        : "well-formed YAML";
  }

  private static Document broken(int line, String found, String expected) {
    NullNode nothing = NullNode.getInstance();
    return new Document(
        nothing,
        new Lines(nothing, new int[] {line}),
        List.of(new ReadFault(line, "", found, expected)));
  }

  /** The decoder stops before the first bad byte. */
  private static int lineOfBadByte(byte[] bytes) {
    ByteBuffer in = ByteBuffer.wrap(bytes);
    java.nio.CharBuffer out = java.nio.CharBuffer.allocate(bytes.length);
    StandardCharsets.UTF_8
        .newDecoder()
        .onMalformedInput(CodingErrorAction.REPORT)
        .onUnmappableCharacter(CodingErrorAction.REPORT)
        .decode(in, out, true);
    return 1 + (int) out.flip().chars().filter(c -> c == '\n').count();
  }
}
