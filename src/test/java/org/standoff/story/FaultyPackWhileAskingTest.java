package org.standoff.story;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;
import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.quarkus.test.junit.QuarkusTestProfile;
import io.quarkus.test.junit.TestProfile;
import io.restassured.response.Response;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Queue;
import java.util.concurrent.ConcurrentLinkedQueue;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Ask;
import org.standoff.fixture.EmbeddedDatabaseResource;

/**
 * A file of a pack is spoilt and mended while others ask: nobody's question is lost, the last good
 * version answers until the mended one does, and whoever looks is told what is wrong and where.
 */
@QuarkusTest
@TestProfile(FaultyPackWhileAskingTest.OwnFolder.class)
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class FaultyPackWhileAskingTest {
  private static final int ASKING = 4;
  private static final Duration PATIENCE = Duration.ofSeconds(60);

  /** It bears peaks of 138.01 dB; the question is 130 dB. */
  private static final double BEFORE_DB = 8.01;

  /** Mended, it bears 2 dB more. */
  private static final double AFTER_DB = 10.01;

  private final Queue<Answer> answers = new ConcurrentLinkedQueue<>();

  /** What one of those who ask was told. */
  private record Answer(int status, double headroomDb, String revision) {}

  /** Packs in a folder that the test may write to; the pack in it counts before the shipped one. */
  public static class OwnFolder implements QuarkusTestProfile {
    static final Path FOLDER = copyOf(Path.of("catalogue", "boathouse"));

    @Override
    public Map<String, String> getConfigOverrides() {
      return Map.of(
          "standoff.catalogue.folders", FOLDER.toString(), "standoff.catalogue.look-every", "0.1s");
    }

    private static Path copyOf(Path pack) {
      try (Stream<Path> files = Files.walk(pack)) {
        Path folder = Files.createTempDirectory("packs");
        for (Path file : (Iterable<Path>) files::iterator) {
          Path copy = folder.resolve(pack.getParent().relativize(file).toString());
          if (Files.isDirectory(file)) {
            Files.createDirectories(copy);
          } else {
            Files.copy(file, copy);
          }
        }
        return folder;
      } catch (IOException broken) {
        throw new UncheckedIOException(broken);
      }
    }
  }

  @Test
  void noQuestionIsLostAndTheLastGoodVersionAnswersUntilTheMendedOneDoes() throws Exception {
    Path file = OwnFolder.FOLDER.resolve("boathouse/microphones/ldc-multi-1.yaml");
    String good = Files.readString(file);
    int line =
        good.lines().toList().indexOf("maximum_spl: { level_db_spl: 135, thd_percent: 0.5 }");
    AtomicBoolean asking = new AtomicBoolean(true);
    ExecutorService people = Executors.newFixedThreadPool(ASKING);
    List<Future<?>> askers = new ArrayList<>();
    for (int i = 0; i < ASKING; i++) {
      askers.add(people.submit(() -> askWhile(asking)));
    }
    try {
      awaitMoreAnswers();
      Files.writeString(file, good.replace("level_db_spl: 135", "level_db_spl: loud"));
      await().atMost(PATIENCE).until(() -> pack().path("status").asText().equals("faulty"));
      assertToldWhatIsWrong(line + 1);
      awaitMoreAnswers();

      Files.writeString(file, good.replace("level_db_spl: 135", "level_db_spl: 137"));
      await().atMost(PATIENCE).until(() -> pack().path("status").asText().equals("ok"));
      awaitMoreAnswers();
    } finally {
      asking.set(false);
      people.shutdown();
      assertThat(people.awaitTermination(PATIENCE.toSeconds(), TimeUnit.SECONDS)).isTrue();
    }
    for (Future<?> asker : askers) {
      asker.get();
    }
    assertThat(answers).allMatch(answer -> answer.status() == 200);
    assertThat(answers).extracting(Answer::headroomDb).containsOnly(BEFORE_DB, AFTER_DB);
    // one snapshot a request: a revision never goes with the other figure
    assertThat(answers.stream().map(a -> a.revision() + " " + a.headroomDb()).distinct())
        .hasSize(2);
    assertThat(answers.stream().map(Answer::revision).distinct()).hasSize(2);
    assertThat(ask().headroomDb()).isEqualTo(AFTER_DB);
  }

  private static void assertToldWhatIsWrong(int line) {
    JsonNode pack = pack();
    assertThat(pack.path("in_use").asBoolean()).isTrue();
    JsonNode finding = pack.at("/findings/0");
    assertThat(finding.path("severity").asText()).isEqualTo("fault");
    assertThat(finding.path("file").asText()).endsWith("microphones/ldc-multi-1.yaml");
    assertThat(finding.path("line").asInt()).isEqualTo(line);
    assertThat(finding.path("pointer").asText()).isEqualTo("/maximum_spl/level_db_spl");
    assertThat(finding.path("found").asText()).contains("loud");
    JsonNode checks =
        Ask.tree(given().get("/q/health/ready").then().statusCode(200).extract().asString())
            .path("checks");
    assertThat(checks)
        .anySatisfy(
            check -> {
              assertThat(check.path("name").asText()).isEqualTo("catalogue");
              assertThat(check.path("status").asText()).isEqualTo("UP");
              assertThat(check.at("/data/faulty").asText()).isEqualTo("boathouse");
            });
  }

  private static JsonNode pack() {
    return Ask.tree(given().get("/v1/packs/boathouse").then().extract().asString());
  }

  private void awaitMoreAnswers() {
    int enough = answers.size() + 20;
    await().atMost(PATIENCE).until(() -> answers.size() >= enough);
  }

  private void askWhile(AtomicBoolean asking) {
    while (asking.get()) {
      answers.add(ask());
    }
  }

  private static Answer ask() {
    Response response =
        given()
            .get(
                "/v1/headroom?peak_db_spl=130&microphone=boathouse/ldc-multi-1"
                    + "&preamp=boathouse/recorder&gain_db=0");
    JsonNode answer = Ask.tree(response.asString());
    return new Answer(
        response.statusCode(),
        answer.at("/stages/0/headroom_db").asDouble(),
        answer.at("/basis/catalogue_revision").asText());
  }
}
