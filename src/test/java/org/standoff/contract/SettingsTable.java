package org.standoff.contract;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * The settings of the service, read from where they are told: the settings interfaces with their
 * words, the lines of {@code application.yaml} above which a comment begins with {@code set:}, and
 * comments there that begin with {@code set} and the name of what has no default.
 */
final class SettingsTable {
  private static final Pattern PREFIX =
      Pattern.compile("@ConfigMapping\\(prefix = \"([^\"]+)\"\\)");
  private static final Pattern MEMBER =
      Pattern.compile(
          "/\\*\\*(?<words>(?:(?!\\*/).)*)\\*/\\s*(?:@WithDefault\\(\"(?<value>[^\"]*)\"\\)\\s*)?"
              + "(?:(?<type>[\\w<>.]+) (?<name>\\w+)\\(\\);|interface (?<inner>\\w+) \\{)",
          Pattern.DOTALL);
  private static final Pattern LINE = Pattern.compile("( *)([\\w.-]+):(?: (.*))?");
  private static final String MARK = "# set: ";
  private static final Pattern UNSET = Pattern.compile("# set ([\\w.-]+): (.*)");

  /**
   * One setting.
   *
   * @param value what counts where it is not set; empty where nothing does
   */
  record Setting(String key, String value, String words) {

    String row() {
      String environment = key.toUpperCase(Locale.ROOT).replaceAll("[^A-Z0-9]", "_");
      return "| `%s` | `%s` | %s | %s |"
          .formatted(key, environment, value.isEmpty() ? "–" : "`" + value + "`", words);
    }
  }

  private final TreeMap<String, Setting> settings = new TreeMap<>();

  private SettingsTable() {}

  static SettingsTable read() {
    SettingsTable table = new SettingsTable();
    try (Stream<Path> sources = Files.walk(Path.of("src", "main", "java"))) {
      for (Path source : (Iterable<Path>) sources.sorted()::iterator) {
        if (source.toString().endsWith("Settings.java")) {
          table.fromInterface(Files.readString(source));
        }
      }
      table.fromYaml(Files.readAllLines(Path.of("src", "main", "resources", "application.yaml")));
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
    return table;
  }

  List<Setting> settings() {
    return List.copyOf(settings.values());
  }

  String markdown() {
    StringBuilder text =
        new StringBuilder("| setting | in the environment | default | what it does |\n");
    text.append("| --- | --- | --- | --- |\n");
    settings.values().forEach(setting -> text.append(setting.row()).append('\n'));
    return text.toString();
  }

  private void fromInterface(String source) {
    Matcher prefix = PREFIX.matcher(source);
    if (!prefix.find()) {
      return;
    }
    String begin = prefix.group(1) + ".";
    String inner = "";
    Matcher member = MEMBER.matcher(source);
    while (member.find()) {
      if (member.group("inner") != null) {
        inner = kebab(member.group("inner")) + ".";
      } else if (!source.contains("interface " + member.group("type") + " {")) {
        String key = begin + inner + kebab(member.group("name"));
        String value = Optional.ofNullable(member.group("value")).orElse("");
        settings.put(key, new Setting(key, value, words(member.group("words"))));
      }
    }
  }

  private static String kebab(String name) {
    return name.replaceAll("(?<=[a-z])([A-Z])", "-$1").toLowerCase(Locale.ROOT);
  }

  private static String words(String javadoc) {
    return javadoc
        .replaceAll("\\n\\s*\\* ?", " ")
        .replaceAll("\\{@code ([^}]+)}", "`$1`")
        .replaceAll("\\s+", " ")
        .strip();
  }

  private void fromYaml(List<String> lines) {
    Deque<String> path = new ArrayDeque<>();
    List<String> comment = new ArrayList<>();
    for (String line : lines) {
      String text = line.strip();
      if (text.startsWith("#")) {
        if (text.startsWith("# set")) {
          // another setting begins here
          unset(comment);
          comment.clear();
        }
        comment.add(text);
        continue;
      }
      unset(comment);
      Matcher matcher = LINE.matcher(line);
      if (matcher.matches()) {
        int depth = matcher.group(1).length() / 2;
        while (path.size() > depth) {
          path.removeLast();
        }
        path.addLast(matcher.group(2).replace("\"", ""));
        if (!comment.isEmpty() && comment.get(0).startsWith(MARK) && matcher.group(3) != null) {
          String key = String.join(".", path);
          String words = String.join(" ", comment).replace(MARK, "").replace("# ", "");
          settings.put(key, new Setting(key, matcher.group(3).strip(), sentence(words)));
        }
      }
      comment.clear();
    }
  }

  /** A comment that names a setting which no line of the file sets. */
  private void unset(List<String> comment) {
    Matcher named = UNSET.matcher(String.join(" ", comment).replaceAll(" # (?!set )", " "));
    if (named.matches()) {
      String key = named.group(1);
      settings.put(key, new Setting(key, "", sentence(named.group(2))));
    }
  }

  private static String sentence(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
  }
}
