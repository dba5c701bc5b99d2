package org.standoff.rest;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The words of the description in HTML. */
final class DescriptionPage {

  /** The one thing of CommonMark that the words have, beside paragraphs. */
  private static final Pattern CODE = Pattern.compile("`([^`]+)`");

  private DescriptionPage() {}

  static String of(ServedDescription description) {
    Map<String, List<ServedDescription.Operation>> byTag =
        description.operations().stream()
            .collect(
                Collectors.groupingBy(
                    ServedDescription.Operation::tag, LinkedHashMap::new, Collectors.toList()));
    return """
        <!doctype html>
        <html lang="en">
        <head><meta charset="utf-8"><title>%s</title></head>
        <body>
        <h1>%s %s</h1>
        %s
        <p>For programs: <a href="/openapi">OpenAPI</a>.</p>
        %s</body>
        </html>
        """
        .formatted(
            escaped(description.title()),
            escaped(description.title()),
            escaped(description.version()),
            paragraphs(description.words()),
            byTag.entrySet().stream()
                .map(part -> part(part.getKey(), part.getValue()))
                .collect(Collectors.joining()));
  }

  private static String part(String tag, List<ServedDescription.Operation> operations) {
    return operations.stream()
        .map(
            operation ->
                """
                <dt><code>%s %s</code> %s</dt>
                <dd>%s
                <details><summary>A call</summary>
                %s</details></dd>
                """
                    .formatted(
                        operation.method(),
                        escaped(operation.path()),
                        prose(operation.summary()),
                        prose(operation.description()),
                        samples(operation.sample())))
        .collect(Collectors.joining("", "<h2>" + escaped(tag) + "</h2>\n<dl>\n", "</dl>\n"));
  }

  private static String samples(SampleCall call) {
    return Stream.of(SampleLanguage.values())
        .map(
            language ->
                "<p>%s</p><pre><code>%s</code></pre>\n"
                    .formatted(language.title(), escaped(language.write(call))))
        .collect(Collectors.joining());
  }

  private static String paragraphs(String words) {
    return Stream.of(words.strip().split("\n\\s*\n"))
        .map(paragraph -> "<p>" + prose(paragraph) + "</p>")
        .collect(Collectors.joining("\n"));
  }

  private static String prose(String words) {
    return CODE.matcher(escaped(words)).replaceAll("<code>$1</code>");
  }

  private static String escaped(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
