package org.standoff.rest.json;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import jakarta.enterprise.context.ApplicationScoped;
import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standoff.answers.CpuBudget;
import org.standoff.rest.http.BodyLimit;
import org.standoff.rest.http.WholeBody;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.problem.Problem;
import org.standoff.rest.problem.Problems;

/**
 * Many requests in one body, one a line, answered line by line in the same order. A faulty line
 * gets a problem in its place and spoils no other.
 */
@ApplicationScoped
public class Batch {

  public static final String MEDIA_TYPE = "application/x-ndjson";
  public static final int MOST_LINES = 1000;

  /** How many may be asked in a batch, for the description of every operation that takes one. */
  public static final String WORDS =
      " As application/x-ndjson up to "
          + MOST_LINES
          + " questions, one a line and "
          + BodyLimit.BYTES
          + " bytes in all, are answered line by line in their order: {\"line\": 1, \"answer\": …} or"
          + " {\"line\": 1, \"problem\": …}. They share the "
          + CpuBudget.MOST_MS
          + " ms of CPU time, by estimate, that one request may take: a line that"
          + " would take more than is left gets the problem TOO_COSTLY in its place, and"
          + " later ones that take less are answered.";

  /**
   * What one line gets.
   *
   * @param line number of the line, counted from 1
   * @param answer what a single request would have been answered, if it was in order
   * @param problem what is wrong with it, if it was not
   */
  @JsonInclude(JsonInclude.Include.NON_NULL)
  record Line(int line, @Nullable Object answer, @Nullable Problem problem) {}

  private final ObjectMapper json;
  private final Problems problems;

  Batch(ObjectMapper json, Problems problems) {
    this.json = json;
    this.problems = problems;
  }

  /**
   * Answers every line that is not blank.
   *
   * @param one answers one request from its JSON text
   * @param requestId names the request in problems
   */
  public byte[] answer(InputStream body, Function<byte[], Object> one, String requestId) {
    List<String> lines = lines(body);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    for (int i = 0; i < lines.size(); i++) {
      if (!lines.get(i).isBlank()) {
        out.writeBytes(bytes(answer(i + 1, lines.get(i), one, requestId)));
        out.write('\n');
      }
    }
    return out.toByteArray();
  }

  private Line answer(int number, String text, Function<byte[], Object> one, String requestId) {
    try {
      return new Line(number, one.apply(text.getBytes(StandardCharsets.UTF_8)), null);
    } catch (RuntimeException failure) {
      return new Line(number, null, problems.of(failure, requestId));
    }
  }

  private static List<String> lines(InputStream body) {
    List<String> lines = new String(WholeBody.of(body), StandardCharsets.UTF_8).lines().toList();
    if (lines.size() > MOST_LINES) {
      throw new InvalidRequest(
          Fault.atPointer("", FaultCode.WRONG_LENGTH, "The batch has too many lines; split it.")
              .found(lines.size())
              .allowed("at most " + MOST_LINES + " lines"));
    }
    return lines;
  }

  private byte[] bytes(Line line) {
    try {
      return json.writeValueAsBytes(line);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("An answer can always be written", impossible);
    }
  }
}
