package org.standoff.rest.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import io.restassured.RestAssured;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.fixture.EmbeddedDatabaseResource;

/** A tag names the coding that its answer really comes in, whatever way that was asked for. */
@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class ContentCodingTest {

  private final HttpClient client = HttpClient.newHttpClient();

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "                       |",
        "identity               |",
        "gzip                   | gzip",
        "deflate                | deflate",
        "gzip, deflate, br      | gzip",
        "gzip;q=0.5, deflate    | deflate",
        "*                      | gzip",
        "*, gzip;q=0            | deflate",
        "gzip;q=0               |",
        "gzip;q=0, deflate;q=0  |",
        "br                     |"
      })
  void theTagNamesTheCodingThatTheAnswerComesIn(@Nullable String accepted, @Nullable String coding)
      throws IOException, InterruptedException {
    HttpResponse<byte[]> plain = get(null, null);
    HttpResponse<byte[]> answer = get(accepted, null);

    assertThat(answer.headers().firstValue("Content-Encoding").orElse(null)).isEqualTo(coding);
    String tag = tag(plain);
    String expected =
        coding == null ? tag : tag.substring(0, tag.length() - 1) + "-" + coding + "\"";
    assertThat(tag(answer)).isEqualTo(expected);
    assertThat(get(accepted, expected).statusCode()).isEqualTo(304);
  }

  private HttpResponse<byte[]> get(@Nullable String accepted, @Nullable String known)
      throws IOException, InterruptedException {
    URI sources = URI.create(RestAssured.baseURI + ":" + RestAssured.port + "/v1/sources");
    HttpRequest.Builder request = HttpRequest.newBuilder(sources);
    if (accepted != null) {
      request.header("Accept-Encoding", accepted);
    }
    if (known != null) {
      request.header("If-None-Match", known);
    }
    return client.send(request.build(), HttpResponse.BodyHandlers.ofByteArray());
  }

  private static String tag(HttpResponse<?> answer) {
    return answer.headers().firstValue("ETag").orElseThrow();
  }
}
