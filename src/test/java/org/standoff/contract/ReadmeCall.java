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
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.standoff.fixture.ExampleCaller;
import org.standoff.fixture.Tokens;

/**
 * A call as README.md shows it: {@code curl} with {@code -H}, {@code -X}, {@code -d} and one
 * address, perhaps piped into {@code jq} with a plain path; or a Python caller with a token. {@code
 * $NAME} stands for one of the tokens that README.md has minted before. Anything else is refused,
 * so that what the README shows is what was sent.
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
  private static final Pattern WORD =
      Pattern.compile("'([^']*)'|\"([^\"]*)\"|(\\S+)", Pattern.DOTALL);
  private static final Pattern CALLER =
      Pattern.compile("STANDOFF_TOKEN=(\\S+) python3 openapi/examples/(\\S+)(.*)");
  private static final Pattern STEP = Pattern.compile("\\.([a-z0-9_]+)|\\[(\\d+)]|\\.\"([^\"]+)\"");

  private static final Map<String, String> TOKENS =
      Map.of(
          "$ADMIN", Tokens.admin(),
          "$OSTREL", Tokens.publisher("ostrel-hire"),
          "$DESK", Tokens.booker("saltlight-desk"));

  private final List<String> words;
  private final String path;

  ReadmeCall(String command) {
    String joined = command.replace("\\\n", " ");
    int pipe = joined.lastIndexOf("| jq ");
    this.path = pipe < 0 ? "" : joined.substring(pipe + "| jq ".length()).strip().replace("'", "");
    this.words = words(pipe < 0 ? joined : joined.substring(0, pipe));
  }

  /** What a Python caller prints. */
  static String outputOfCaller(String command) {
    Matcher caller = CALLER.matcher(command);
    if (!caller.matches()) {
      throw new IllegalArgumentException("no caller is run so: " + command);
    }
    ExampleCaller.Ended ended =
        ExampleCaller.run(
            caller.group(2), told(caller.group(1)), words(caller.group(3)).toArray(String[]::new));
    if (ended.exitCode() != 0) {
      throw new IllegalStateException(command + " ended with " + ended);
    }
    return Masks.apply(ended.out().stripTrailing());
  }

  /** Sends the call and represents what a terminal would show, with what changes masked. */
  String output() {
    RequestSpecification request = given().urlEncodingEnabled(false);
    String address = null;
    String method = null;
    String usual = "GET";
    for (int i = 1; i < words.size(); i++) {
      switch (words.get(i)) {
        case "-s" -> {}
        case "-H" -> {
          String[] header = told(words.get(++i)).split(": ", 2);
          request.header(header[0], header[1]);
        }
        case "-X" -> method = words.get(++i);
        case "-d", "--data-binary" -> {
          request.body(body(words.get(++i)));
          usual = "POST";
        }
        default -> address = words.get(i);
      }
    }
    if (address == null || !address.startsWith(SERVICE)) {
      throw new IllegalArgumentException("a README call goes to " + SERVICE + ": " + words);
    }
    Response response =
        request.request(
            method == null ? usual : method,
            address.substring(SERVICE.length()).replace(" ", "%20"));
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
      words.add(
          word.group(1) != null
              ? word.group(1)
              : word.group(2) != null ? word.group(2) : word.group(3));
    }
    return words;
  }

  /** The word as the shell gives it on. */
  private static String told(String word) {
    String told = word;
    for (Map.Entry<String, String> token : TOKENS.entrySet()) {
      told = told.replace(token.getKey(), token.getValue());
    }
    return told;
  }

  private static byte[] body(String word) {
    try {
      return word.startsWith("@")
          ? Files.readAllBytes(Path.of(word.substring(1)))
          : word.getBytes(StandardCharsets.UTF_8);
    } catch (IOException missing) {
      throw new UncheckedIOException(missing);
    }
  }
}
