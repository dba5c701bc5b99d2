package org.standoff.contract.generated;

import static io.restassured.RestAssured.given;

import io.restassured.config.EncoderConfig;
import io.restassured.config.HttpClientConfig;
import io.restassured.config.RestAssuredConfig;
import io.restassured.http.ContentType;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.HashMap;
import java.util.Map;

/** Sends calls to the running service byte for byte. */
final class OverRestAssured implements Service {
  private static final RestAssuredConfig PLAIN =
      RestAssuredConfig.config()
          .httpClient(HttpClientConfig.httpClientConfig().reuseHttpClientInstance())
          .encoderConfig(
              EncoderConfig.encoderConfig()
                  .appendDefaultContentCharsetToContentTypeIfUndefined(false));

  @Override
  public Reply send(Call call) {
    RequestSpecification request = given().urlEncodingEnabled(false);
    RestAssuredConfig config = PLAIN;
    String type = call.headers().get("Content-Type");
    if (type != null) {
      config =
          config.encoderConfig(
              config.getEncoderConfig().encodeContentTypeAs(type, ContentType.BINARY));
    }
    request.config(config);
    call.headers()
        .forEach(
            (name, value) -> {
              if (name.equals("Content-Type")) {
                request.contentType(value);
              } else {
                request.header(name, value);
              }
            });
    if (call.body() != null) {
      request.body(call.body());
    }
    Response response = request.request(call.method(), call.target());
    Map<String, String> headers = new HashMap<>();
    response.getHeaders().forEach(header -> headers.put(header.getName(), header.getValue()));
    byte[] body = response.asByteArray();
    return new Reply(response.statusCode(), headers, body == null ? new byte[0] : body);
  }
}
