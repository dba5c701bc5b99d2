package org.standoff.rest;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

class SampleLanguageTest {

  private static final String SERVER = "http://127.0.0.1:8080";

  private static final String READING =
      """
      {"parameters": [
        {"name": "pack", "in": "path", "example": "core"},
        {"name": "about", "in": "query", "examples": {"loud": {"value": ["a b", "c&d"]}}},
        {"name": "other", "in": "query", "examples": {"quiet": {"value": 1}}},
        {"name": "If-None-Match", "in": "header"}],
       "security": [{}, {"bearer": []}]}
      """;

  private static final String CHANGING =
      """
      {"parameters": [{"name": "If-Match", "in": "header"}],
       "requestBody": {"content": {"application/json": {"examples": {
         "one": {"value": {"note": "it's \\"x\\" [[1]]"}}, "two": {"value": {}}}}}},
       "security": [{"bearer": []}]}
      """;

  @Test
  void aQuestionHasTheValuesOfTheFirstExampleAndNoToken() {
    assertThat(write(SampleLanguage.SHELL, "GET", "/v1/things/{pack}", READING))
        .isEqualTo(
            "curl -sS --fail-with-body 'http://127.0.0.1:8080/v1/things/core?about=a+b&about=c%26d'\n");
  }

  @Test
  void aChangeInTheShellIsQuotedForTheShell() {
    assertThat(write(SampleLanguage.SHELL, "PUT", "/v1/things", CHANGING))
        .isEqualTo(
            """
            curl -sS --fail-with-body -X PUT 'http://127.0.0.1:8080/v1/things' \\
              -H 'If-Match: *' \\
              -H 'Content-Type: application/json' \\
              -H "Authorization: Bearer $STANDOFF_TOKEN" \\
              --data-binary '{
              "note" : "it'\\''s \\"x\\" [[1]]"
            }'
            """);
  }

  @Test
  void aChangeInPython() {
    assertThat(write(SampleLanguage.PYTHON, "PUT", "/v1/things", CHANGING))
        .isEqualTo(
            """
            import os
            import urllib.error
            import urllib.request

            body = r'''{
              "note" : "it's \\"x\\" [[1]]"
            }'''
            request = urllib.request.Request(
                "http://127.0.0.1:8080/v1/things",
                method="PUT",
                headers={"Authorization": "Bearer " + os.environ["STANDOFF_TOKEN"], "Content-Type": "application/json", "If-Match": "*"},
                data=body.encode(),
            )
            try:
                with urllib.request.urlopen(request) as answer:
                    print(answer.read().decode())
            except urllib.error.HTTPError as refused:
                raise SystemExit(refused.read().decode())
            """);
  }

  @Test
  void aChangeInLua() {
    assertThat(write(SampleLanguage.LUA, "PUT", "/v1/things", CHANGING))
        .isEqualTo(
            """
            local http = require("socket.http")
            local answer = {}
            local body = [==[
            {
              "note" : "it's \\"x\\" [[1]]"
            }]==]
            local _, status = assert(http.request({
              url = "http://127.0.0.1:8080/v1/things",
              method = "PUT",
              headers = {["Authorization"] = "Bearer " .. os.getenv("STANDOFF_TOKEN"), ["Content-Length"] = #body, ["Content-Type"] = "application/json", ["If-Match"] = "*"},
              source = require("ltn12").source.string(body),
              sink = require("ltn12").sink.table(answer),
            }))
            assert(status < 300, table.concat(answer))
            print(table.concat(answer))
            """);
  }

  @Test
  void whatIsMadeByAChangeNeedsNothingToStand() {
    String making = CHANGING.replaceFirst("\\{", "{\"responses\": {\"200\": {}, \"201\": {}},");
    assertThat(write(SampleLanguage.SHELL, "PUT", "/v1/things", making))
        .doesNotContain("If-Match")
        .contains("Content-Type");
  }

  private static String write(
      SampleLanguage language, String method, String path, String operation) {
    return language.write(SampleCall.of(SERVER, method, path, json(operation)));
  }

  private static JsonNode json(String text) {
    try {
      return new ObjectMapper().readTree(text);
    } catch (JsonProcessingException impossible) {
      throw new IllegalArgumentException(impossible);
    }
  }
}
