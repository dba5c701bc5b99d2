package org.standoff.contract.generated;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Bodies as text: JSON written whatever is in it, and what is no JSON at all. */
final class Texts {
  private static final ObjectWriter WITH_ESCAPES =
      Api.JSON.writer().with(JsonGenerator.Feature.ESCAPE_NON_ASCII);
  private static final int OVER_THE_LIMIT = (1 << 20) + 1;
  private static final int VERY_DEEP = 100_000;

  private Texts() {}

  /** Half a surrogate pair goes out as an escape: it has no bytes. */
  static String of(JsonNode body) {
    String text = body.toString();
    if (UTF_8.newEncoder().canEncode(text)) {
      return text;
    }
    try {
      return WITH_ESCAPES.writeValueAsString(body);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException(impossible);
    }
  }

  /** No JSON within the limits, by what is wrong with it. */
  static Map<String, byte[]> malformed(String good) {
    Map<String, byte[]> all = new LinkedHashMap<>();
    String inside = good.substring(1);
    all.put("blank", " \n".getBytes(UTF_8));
    all.put("cut", good.substring(0, good.length() - 1).getBytes(UTF_8));
    all.put("half", good.substring(0, good.length() / 2).getBytes(UTF_8));
    all.put("more behind", (good + "x").getBytes(UTF_8));
    all.put("twice", (good + good).getBytes(UTF_8));
    all.put("comma before", ("{," + inside).getBytes(UTF_8));
    all.put("comment", ("{/* */" + inside).getBytes(UTF_8));
    all.put("single quotes", "{'a': 1}".getBytes(UTF_8));
    all.put("bare name", "{a: 1}".getBytes(UTF_8));
    for (String number : new String[] {"NaN", "-Infinity", "01", "+1", ".5", "1.", "0x1", "1e"}) {
      all.put("number " + number, ("{\"a\": " + number + "}").getBytes(UTF_8));
    }
    all.put("long number", ("{\"a\": " + "1".repeat(500) + "}").getBytes(UTF_8));
    all.put("control character", "{\"a\u0001\": 1}".getBytes(UTF_8));
    all.put("bad escape", "{\"\\x\": 1}".getBytes(UTF_8));
    all.put("doubled member", "{\"a\": 1, \"a\": 1}".getBytes(UTF_8));
    all.put("no UTF-8", "{\"a\u00ff\u00fe\": 1}".getBytes(ISO_8859_1));
    all.put("zero bytes", new byte[64]);
    all.put("deep lists", "[".repeat(VERY_DEEP).getBytes(UTF_8));
    all.put("deep objects", "{\"a\":".repeat(VERY_DEEP).getBytes(UTF_8));
    all.put("a form", "a=1&b=2".getBytes(UTF_8));
    all.put("markup", "<a/>".getBytes(UTF_8));
    return all;
  }

  /** A sheet of commas and lines in which one thing is not as it was. */
  static List<String> spoilt(String good) {
    return List.of(
        good + good,
        good.substring(0, good.length() / 2),
        "\ufeff" + good,
        good.replace("\n", "\r\n"),
        good.replace("\n", "\r"),
        good.replace("\n", "\n\n"),
        good.replace(",", ";"),
        good.replace(",", ",,"),
        good.replace(",", ",\""),
        good.replaceFirst(",[^,]*,", ",=1+1,"),
        good.replaceFirst("\n", "\n\0"),
        good.replaceAll("\\d", "9".repeat(30)),
        good.replaceAll("(?m)^[^,]*,", ","),
        good.replaceFirst("[a-z]+", "🥁"));
  }

  /** JSON, but more of it than is read. */
  static boolean isTooLarge(byte[] body) {
    return body.length >= OVER_THE_LIMIT;
  }

  static byte[] tooLarge() {
    return ("\"" + "x".repeat(OVER_THE_LIMIT) + "\"").getBytes(UTF_8);
  }
}
