package org.standoff.rest.http;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class EntityTagsTest {

  private static final byte[] ANSWER = "{\"gain_db\":20.0}".getBytes(UTF_8);
  private final String tag = EntityTags.of(ANSWER, "application/json");

  @Test
  void theSameAnswerHasTheSameTag() {
    assertThat(EntityTags.of(ANSWER.clone(), "application/json"))
        .isEqualTo(tag)
        .matches("\"[\\w-]{22}\"");
  }

  @Test
  void bytesAndTypeEachChangeTheTag() {
    assertThat(EntityTags.of("{}".getBytes(UTF_8), "application/json")).isNotEqualTo(tag);
    assertThat(EntityTags.of(ANSWER, "text/plain")).isNotEqualTo(tag);
  }

  @Test
  void everyFormOfAStateHasATagOfItsOwnThatNamesTheState() {
    String state = "\"store/units-1\"";
    String plain = EntityTags.ofForm(state, ANSWER, "application/json");
    assertThat(plain).isEqualTo("\"store/units-1;" + tag.substring(1));
    assertThat(EntityTags.ofForm(state, ANSWER, "text/csv")).isNotEqualTo(plain);
    assertThat(EntityTags.ofForm(state, ANSWER, "application/json;charset=UTF-8")).isEqualTo(plain);
    assertThat(EntityTags.isOfState(plain, state)).isTrue();
    assertThat(EntityTags.isOfState(state, state)).isTrue();
    assertThat(EntityTags.isOfState("\"store/units-1-gzip\"", state)).isTrue();
  }

  @Test
  void theTagOfAnotherStateIsNotOfThisOne() {
    for (String other :
        new String[] {
          "\"store/units-12\"", "\"store/units-12;x\"", "W/\"store/units-1\"", "\"store/units-1x\""
        }) {
      assertThat(EntityTags.isOfState(other, "\"store/units-1\"")).as(other).isFalse();
    }
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
