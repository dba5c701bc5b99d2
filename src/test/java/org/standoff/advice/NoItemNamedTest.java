package org.standoff.advice;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.PublishedSources;

/** Decisions follow from figures and purposes: no rule may ask which item it has before it. */
class NoItemNamedTest {
  private static final Pattern LITERAL = Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"");
  private static final Path SOURCES = Path.of("src/main/java/org/standoff");
  private static final Path CATALOGUE = Path.of("catalogue");

  @Test
  void noLiteralOfAdviceOrChainNamesAnItem() throws IOException {
    Set<String> items = items();
    assertThat(items).hasSizeGreaterThan(100).contains("kick", "snare-top", "ldc-multi-1");
    Pattern anyItem =
        Pattern.compile(
            "(?<![a-z0-9-])("
                + items.stream().map(Pattern::quote).collect(Collectors.joining("|"))
                + ")(?![a-z0-9-])");
    Set<String> named = new TreeSet<>();
    for (Path file : javaFiles()) {
      Matcher literals = LITERAL.matcher(Files.readString(file));
      while (literals.find()) {
        if (anyItem.matcher(literals.group(1)).find()) {
          named.add(file.getFileName() + ": " + literals.group());
        }
      }
    }
    assertThat(named).as("take the name out and ask for a figure or a purpose").isEmpty();
  }

  private static Set<String> items() throws IOException {
    Set<String> items = new TreeSet<>(PublishedSources.placements().keySet());
    try (Stream<Path> files = Files.walk(CATALOGUE)) {
      files
          .map(file -> file.getFileName().toString())
          .filter(name -> name.endsWith(".yaml") && !name.equals("pack.yaml"))
          .forEach(name -> items.add(name.substring(0, name.length() - ".yaml".length())));
    }
    return items;
  }

  private static List<Path> javaFiles() throws IOException {
    try (Stream<Path> advice = Files.list(SOURCES.resolve("advice"));
        Stream<Path> chain = Files.list(SOURCES.resolve("chain"))) {
      List<Path> files =
          Stream.concat(advice, chain).filter(file -> file.toString().endsWith(".java")).toList();
      assertThat(files).hasSizeGreaterThan(50);
      return files;
    }
  }
}
