package org.standoff.contract;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import io.restassured.RestAssured;
import io.restassured.config.EncoderConfig;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.Comparator;
import java.util.Map;
import org.standoff.fixture.Tokens;

/** Sends the examples of what is changed at its address, as one who may do everything. */
final class ToldExamples {

  private ToldExamples() {}

  /** Everything that the examples tell, what holds something before what it holds. */
  static void tell(Described described) {
    described.operations().stream()
        .filter(operation -> operation.method().equals("put"))
        .sorted(Comparator.comparing(Described.Operation::path))
        .forEach(
            operation -> {
              for (Map.Entry<String, JsonNode> body :
                  operation.told().at("/requestBody/content").properties()) {
                body.getValue()
                    .path("examples")
                    .forEach(
                        example ->
                            assertThat(
                                    put(operation, body.getKey(), example.path("value"))
                                        .statusCode())
                                .as(operation.id())
                                .isIn(200, 201));
              }
            });
  }

  static Response put(Described.Operation operation, String type, JsonNode value) {
    String body = value.isTextual() ? value.asText() : value.toString();
    return changing(operation).header("Content-Type", type).body(body).put(operation.path());
  }

  static Response delete(Described.Operation operation) {
    return changing(operation).delete(operation.path());
  }

  /** Names the state that is there, if one is. */
  private static RequestSpecification changing(Described.Operation operation) {
    int there = at(operation).get(operation.path()).statusCode();
    RequestSpecification request =
        at(operation)
            .auth()
            .oauth2(Tokens.admin())
            .config(
                RestAssured.config()
                    .encoderConfig(
                        EncoderConfig.encoderConfig()
                            .appendDefaultContentCharsetToContentTypeIfUndefined(false)));
    return there == 200 ? request.header("If-Match", "*") : request;
  }

  private static RequestSpecification at(Described.Operation operation) {
    RequestSpecification request = given().accept("application/json");
    operation
        .told()
        .path("parameters")
        .forEach(
            parameter -> {
              if (parameter.path("in").asText().equals("path")) {
                request.pathParam(
                    parameter.path("name").asText(), parameter.path("example").asText());
              }
            });
    return request;
  }
}
