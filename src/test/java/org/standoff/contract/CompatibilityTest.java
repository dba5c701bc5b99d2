package org.standoff.contract;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The description keeps what the last released one promised; what it doesn't is a decision, and
 * stands in {@code openapi/CHANGES.md}. {@code openapi/released.yaml} is replaced by hand, when a
 * version is released and at no other time: {@code cp openapi/standoff.yaml openapi/released.yaml}.
 */
class CompatibilityTest {
  private static final YAMLMapper YAML = new YAMLMapper();

  private static final String SMALL =
      """
      paths:
        /a:
          get:
            operationId: a
            security: [{}]
            parameters:
            - {name: n, in: query, schema: {type: integer, minimum: 1, maximum: 9}}
            - {name: w, in: query, schema: {type: string, enum: [x, y]}}
            responses:
              '200':
                headers:
                  ETag: {required: true, schema: {type: string}}
                content:
                  application/json: {schema: {$ref: A}}
                  text/csv: {schema: {type: string}}
          post:
            operationId: b
            requestBody:
              content:
                application/json: {schema: {$ref: Q}}
            responses:
              '201': {content: {application/json: {schema: {$ref: A}}}}
      components:
        schemas:
          A:
            type: object
            required: [level_db]
            properties: {level_db: {type: number}, parts: {type: array, items: {$ref: A}}}
          Q:
            type: object
            required: [source]
            properties: {source: {type: string, maxLength: 64}, count: {type: [integer, 'null']}, levels: {type: object, maxProperties: 5, propertyNames: {maxLength: 7}}}
      """;

  @Test
  void whatIsTakenAwayFromTheReleaseIsToldWordByWord() throws IOException {
    String changes = Files.readString(Path.of("openapi", "CHANGES.md"));
    List<String> told =
        changes
            .lines()
            .filter(line -> line.startsWith("- "))
            .map(line -> line.substring(2))
            .toList();
    assertThat(
            Compatibility.broken(
                read(Path.of("openapi", "released.yaml")),
                read(Path.of("openapi", "standoff.yaml"))))
        .isSubsetOf(told);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "/a:                       | /b:                              | is gone",
        "post:                     | put:                             | is gone",
        "operationId: a            | operationId: z                   | operationId",
        "name: n, in: query        | name: m, in: query               | query n is gone",
        "name: n, in: query        | name: n, in: query, required: true | is wanted now",
        "minimum: 1, maximum: 9    | minimum: 2, maximum: 9           | minimum is 2",
        "minimum: 1, maximum: 9    | minimum: 1, maximum: 8           | maximum is 8",
        "enum: [x, y]              | enum: [x]                        | fewer words",
        "maxLength: 64             | maxLength: 63                    | maxLength is 63",
        "maxLength: 64             | maxLength: 64, pattern: '[a-z]+' | pattern",
        "maxProperties: 5          | maxProperties: 4                 | maxProperties is 4",
        "{maxLength: 7}            | {maxLength: 6}                   | maxLength is 6",
        "required: [source]        | required: [source, count]        | wants [count]",
        "type: [integer, 'null']   | type: integer                    | was [integer, null]",
        "count: {                  | number: {                        | /count is gone",
        "level_db: {type: number}  | level_db: {type: string}         | was [number]",
        "required: [level_db]      | required: [parts]                | may lack [level_db]",
        "level_db: {type: number}  | level: {type: number}            | /level_db is gone",
        "text/csv                  | text/plain                       | no longer given",
        "security: [{}]            | security: [{bearer: []}]         | GET /a wants a token",
        "ETag: {                   | Tag: {                           | 200 header ETag is gone",
        "ETag: {required: true,    | ETag: {                          | ETag may be lacking",
        "true, schema: {type: string} | true, schema: {type: integer} | ETag was [string]",
        "'201':                    | '202':                           | 201 is gone",
        "json: {schema: {$ref: Q}} | xml: {schema: {$ref: Q}}         | no longer taken"
      })
  void whatBreaksCallersIsFound(String old, String now, String told) throws IOException {
    assertThat(brokenBy(old, now)).anySatisfy(line -> assertThat(line).contains(told));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '"',
      value = {
        "minimum: 1, maximum: 9   | minimum: 0, maximum: 10",
        "minimum: 1, maximum: 9   | default: 1",
        "enum: [x, y]             | enum: [x, y, z]",
        "required: [source]       | required: []",
        "type: [integer, 'null']  | type: [integer, 'null', string]",
        "{level_db: {type: number}| {more: {type: string}, level_db: {type: number}",
        "required: [level_db]     | required: [level_db, parts]",
        "security: [{}]           | security: [{}, {bearer: []}]",
        "required: true, schema: {type: string}} | required: true, schema: {type: string}, description: x}",
        "name: n, in: query       | name: n, description: How many, in: query",
        "{source:                 | {more: {type: string}, source:"
      })
  void whatIsAddedBreaksNobody(String old, String now) throws IOException {
    assertThat(brokenBy(old, now)).isEmpty();
  }

  private static List<String> brokenBy(String old, String now) throws IOException {
    assertThat(SMALL).containsOnlyOnce(old);
    return Compatibility.broken(tree(SMALL), tree(SMALL.replace(old, now)));
  }

  private static JsonNode tree(String small) throws IOException {
    return YAML.readTree(small.replaceAll("\\$ref: (\\w)", "\\$ref: '#/components/schemas/$1'"));
  }

  private static JsonNode read(Path file) throws IOException {
    return YAML.readTree(Files.readString(file));
  }
}
