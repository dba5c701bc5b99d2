package org.standoff.story;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.response.Response;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.standoff.fixture.Ask;
import org.standoff.fixture.Batches;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Sheets;

/** One question by query, body and batch; its answer as JSON, as a sheet, in a line. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class WaysOfAskingTest {
  private static final String QUERY =
      "/v1/settings?source=core/snare&placement=top&distance_m=0.05"
          + "&microphone=core/ldc-multi-1&preamp=core/preamp-16";
  private static final Ask BODY =
      Ask.settings()
          .with("source", "core/snare")
          .with("placement", "top")
          .with("distance_m", 0.05)
          .with("microphone", "core/ldc-multi-1")
          .with("preamp", "core/preamp-16");

  @ParameterizedTest
  @ValueSource(strings = {"application/json", "text/csv", "text/plain"})
  void aQueryIsAnsweredAsTheBodyThatSaysTheSame(String form) {
    Response byQuery = given().accept(form).get(QUERY);
    Response byBody = BODY.send(form);
    assertThat(byQuery.statusCode()).isEqualTo(200);
    assertThat(byQuery.contentType()).startsWith(form);
    assertThat(byQuery.asByteArray()).isEqualTo(byBody.asByteArray());
    assertThat(byQuery.header("ETag")).isEqualTo(byBody.header("ETag"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"application/json", "text/csv", "text/plain"})
  void theSameQuestionHasTheSameAnswerAndTheSameTag(String form) {
    Ask question = BODY.item("microphone", Sheets.MULTI_PATTERN);
    Response first = question.send(form);
    Response second = question.send(form);
    assertThat(second.asByteArray()).isEqualTo(first.asByteArray());
    assertThat(second.header("ETag")).isNotEmpty().isEqualTo(first.header("ETag"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"application/json", "text/csv", "text/plain"})
  void whoHasTheAnswerAlreadyIsToldSo(String form) {
    String tag = given().accept(form).get(QUERY).header("ETag");
    given().accept(form).header("If-None-Match", tag).get(QUERY).then().statusCode(304);
    given()
        .accept(form)
        .header("If-None-Match", tag)
        .get(QUERY.replace("0.05", "0.06"))
        .then()
        .statusCode(200);
  }

  @Test
  void nestedMembersAndListsGoIntoAQueryToo() {
    JsonNode byQuery =
        Ask.tree(
            given()
                .get(
                    QUERY
                        + "&told_level.peak_db_spl=140&told_level.spread_db=4"
                        + "&in_line_pads_db=10&in_line_pads_db=20")
                .then()
                .statusCode(200)
                .extract()
                .asString());
    assertThat(byQuery.at("/at_capsule/0/peak_db_spl/high").asDouble()).isEqualTo(144);
    assertThat(byQuery.at("/recommendations/0/changes").findValuesAsText("setting"))
        .contains("in-line-pad");
  }

  @Test
  void aBatchIsAnsweredInOrderAndOneBadLineSpoilsNoOther() {
    String batch =
        String.join(
            "\n",
            BODY.body().toString(),
            BODY.with("source", "core/snar").body().toString(),
            "{\"source\": ",
            "",
            BODY.with("distance_m", 0.5).body().toString());
    List<JsonNode> lines = Batches.answered("/v1/settings", batch);
    assertThat(lines).extracting(line -> line.path("line").asInt()).containsExactly(1, 2, 3, 5);
    assertThat(lines.get(0).path("answer")).isEqualTo(BODY.answer());
    assertThat(lines.get(1).at("/problem/errors/0/pointer").asText()).isEqualTo("/source");
    assertThat(lines.get(1).at("/problem/errors/0/suggestion").asText()).isEqualTo("core/snare");
    assertThat(lines.get(2).at("/problem/code").asText()).isEqualTo("MALFORMED_BODY");
    assertThat(lines.get(3).at("/answer/asked/distance_m").asDouble()).isEqualTo(0.5);
  }

  @Test
  void aSheetHasARowAMicrophoneBestFirstThenWhyNot() {
    Ask question =
        Ask.settings()
            .with("source", "core/kick")
            .with("placement", "inside")
            .with("pack", "boathouse")
            .with("preamp", "boathouse/recorder")
            .with("limit", 50);
    JsonNode answer = question.answer();
    List<String> rows = question.send("text/csv").asString().lines().toList();
    int ranked = answer.path("recommendations").size();
    assertThat(rows).hasSize(1 + ranked + answer.path("why_not").size());
    assertThat(rows.get(0)).startsWith("rank,microphone,verdict,pattern,pad_db");
    assertThat(rows.get(1))
        .startsWith("1," + answer.at("/recommendations/0/microphone").asText() + ",");
    assertThat(rows.get(1 + ranked))
        .startsWith("," + answer.at("/why_not/0/microphone_id").asText() + ",refused,");
  }

  @Test
  void aLineHasTheFiguresOfTheBest() {
    JsonNode best = BODY.best();
    assertThat(BODY.send("text/plain").asString())
        .startsWith("microphone=core/ldc-multi-1 verdict=fits pattern=cardioid pad_db=16 ")
        .contains(" gain_db=%.0f ".formatted(best.at("/settings/gain_db").asDouble()))
        .endsWith("\n");
  }

  @Test
  void aLineSaysWhyThereIsNone() {
    String refused =
        BODY.item("microphone", Sheets.RIBBON).with("phantom", "on").send("text/plain").asString();
    assertThat(refused).startsWith("verdict=refused because=\"").contains("phantom");
  }

  @Test
  void aChainsHeadroomHasARowAStage() {
    Ask chain =
        Ask.headroom()
            .item("microphone", Sheets.MULTI_PATTERN)
            .item("preamp", Sheets.PREAMP)
            .with("peak_db_spl", 140);
    List<String> rows = chain.send("text/csv").asString().lines().toList();
    assertThat(rows.get(0)).isEqualTo("stage,headroom_db,guarded_headroom_db,clip_probability");
    assertThat(rows.subList(1, 5))
        .extracting(row -> row.split(",")[0])
        .containsExactly("electronics", "preamp-input", "preamp-output", "converter");
    assertThat(rows.get(1)).isEqualTo("electronics,2.01,2.01,0");
    assertThat(chain.send("text/plain").asString())
        .contains("microphone=inline/microphone ", " first_to_clip=", " recommended_gain_db=");
  }
}
