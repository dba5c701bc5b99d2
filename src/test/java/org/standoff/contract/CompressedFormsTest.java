package org.standoff.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/** Every form of text that the description promises is compressed for who takes it so. */
class CompressedFormsTest {

  /** The description itself is in none of its own operations. */
  private static final String DESCRIPTION = "application/yaml";

  @Test
  void theListOfCompressedFormsHasEveryTextThatIsAnsweredAndNothingElse() throws IOException {
    Set<String> answered = new TreeSet<>(Set.of(DESCRIPTION));
    for (JsonNode operation : read("openapi/standoff.yaml").findValues("responses")) {
      for (JsonNode response : operation) {
        response.path("content").fieldNames().forEachRemaining(answered::add);
      }
    }
    answered.removeIf(form -> !isText(form));
    Set<String> compressed = new TreeSet<>();
    read("src/main/resources/application.yaml")
        .at("/quarkus/http/compress-media-types")
        .forEach(form -> compressed.add(form.asText()));
    assertThat(compressed).isEqualTo(answered).hasSizeGreaterThan(5);
  }

  private static boolean isText(String form) {
    return form.startsWith("text/") || form.matches("[^;]*(json|xml|yaml)");
  }

  private static JsonNode read(String file) throws IOException {
    return new YAMLMapper().readTree(Path.of(file).toFile());
  }
}
