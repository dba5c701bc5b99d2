package org.standoff.rest.http;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class EntityTagsTest {

  private static final byte[] ANSWER = "{\"gain_db\":20.0}".getBytes(UTF_8);
  private final String tag = EntityTags.of(ANSWER, "application/json", false);

  @Test
  void theSameAnswerHasTheSameTag() {
    assertThat(EntityTags.of(ANSWER.clone(), "application/json", false))
        .isEqualTo(tag)
        .matches("\"[\\w-]{22}\"");
  }

  @Test
  void bytesTypeAndCodingEachChangeTheTag() {
    assertThat(EntityTags.of("{}".getBytes(UTF_8), "application/json", false)).isNotEqualTo(tag);
    assertThat(EntityTags.of(ANSWER, "text/plain", false)).isNotEqualTo(tag);
    assertThat(EntityTags.of(ANSWER, "application/json", true)).isNotEqualTo(tag);
  }

  @Test
  void aTagIsFoundInAListWeakOrStrongAndUnderTheStar() {
    assertThat(EntityTags.matches("\"other\", " + tag, tag)).isTrue();
    assertThat(EntityTags.matches("W/" + tag, tag)).isTrue();
    assertThat(EntityTags.matches("*", tag)).isTrue();
    assertThat(EntityTags.matches("\"other\"", tag)).isFalse();
    assertThat(EntityTags.matches(null, tag)).isFalse();
  }
}
