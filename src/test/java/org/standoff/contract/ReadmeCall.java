package org.standoff.contract;

import static io.restassured.RestAssured.given;

import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A call as README.md shows it: {@code curl} with {@code -H}, {@code -X}, {@code -d} and one
 * address, perhaps piped into {@code jq} with a plain path. Anything else is refused, so that what
 * the README shows is what was sent.
 */
final class ReadmeCall {
  private static final ObjectMapper JSON = new ObjectMapper();

  /** As jq prints it. */
  private static final ObjectWriter PRETTY =
      JSON.writer(
          new DefaultPrettyPrinter(
                  Separators.createDefaultInstance()
                      .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                      .withObjectEmptySeparator("")
                      .withArrayEmptySeparator(""))
              .withArrayIndenter(DefaultIndenter.SYSTEM_LINEFEED_INSTANCE.withLinefeed("\n"))
              .withObjectIndenter(DefaultIndenter.SYSTEM_LINEFEED_INSTANCE.withLinefeed("\n")));

  private static final String SERVICE = "http://127.0.0.1:8080";
  private static final Pattern WORD = Pattern.compile("'([^']*)'|(\\S+)", Pattern.DOTALL);
  private static final Pattern STEP = Pattern.compile("\\.([a-z0-9_]+)|\\[(\\d+)]|\\.\"([^\"]+)\"");

  private final List<String> words;
  private final String path;

  ReadmeCall(String command) {
    String joined = command.replace("\\\n", " ");
    int pipe = joined.lastIndexOf("| jq ");
    this.path = pipe < 0 ? "" : joined.substring(pipe + "| jq ".length()).strip().replace("'", "");
    this.words = words(pipe < 0 ? joined : joined.substring(0, pipe));
  }

  /** Sends the call and represents what a terminal would show, with what changes masked. */
  String output() {
    RequestSpecification request = given().urlEncodingEnabled(false);
    String address = null;
    String method = "GET";
    for (int i = 1; i < words.size(); i++) {
      switch (words.get(i)) {
        case "-s" -> {}
        case "-H" -> {
          String[] header = words.get(++i).split(": ", 2);
          request.header(header[0], header[1]);
        }
        case "-X" -> method = words.get(++i);
        case "-d", "--data-binary" -> {
          request.body(words.get(++i));
          method = "POST";
        }
        default -> address = words.get(i);
      }
    }
    if (address == null || !address.startsWith(SERVICE)) {
      throw new IllegalArgumentException("a README call goes to " + SERVICE + ": " + words);
    }
    Response response =
        request.request(method, address.substring(SERVICE.length()).replace(" ", "%20"));
    return Masks.apply(shown(response));
  }

  private String shown(Response response) {
    String text = response.asString();
    boolean json =
        response.contentType().contains("json") && !response.contentType().contains("nd");
    if (!json) {
      return text.replace("\r\n", "\n").stripTrailing();
    }
    try {
      return PRETTY.writeValueAsString(select(JSON.readTree(text)));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private JsonNode select(JsonNode root) {
    JsonNode node = root;
    Matcher step = STEP.matcher(path);
    while (step.find()) {
      node =
          step.group(2) != null
              ? node.path(Integer.parseInt(step.group(2)))
              : node.path(step.group(1) != null ? step.group(1) : step.group(3));
    }
    return node;
  }

  private static List<String> words(String command) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(command);
    while (word.find()) {
      words.add(word.group(1) != null ? word.group(1) : word.group(2));
    }
    return words;
  }
}
