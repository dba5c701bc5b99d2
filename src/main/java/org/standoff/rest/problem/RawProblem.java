package org.standoff.rest.problem;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A whole answer of HTTP/1.1 that tells a problem, for where no request has come to be one yet, and
 * nothing of the framework is there to write it.
 */
public final class RawProblem {

  /** A problem without faults has no name that needs a rule of spelling. */
  private static final ObjectMapper JSON = new ObjectMapper();

  private RawProblem() {}

  /** The answer, after which the connection is closed. */
  public static byte[] http1(
      ProblemType type, String detail, ToldMembers members, String requestId) {
    byte[] body = body(Problem.of(type, detail, List.of(), members, null, requestId));
    byte[] head =
        """
        HTTP/1.1 %d %s
        Content-Type: %s
        Content-Length: %d
        Content-Language: %s
        Cache-Control: no-store
        X-Content-Type-Options: nosniff
        %s: %s
        Connection: close

        """
            .formatted(
                type.status(),
                type.title(),
                Problem.MEDIA_TYPE,
                body.length,
                Problem.LANGUAGE,
                RequestId.HEADER,
                requestId)
            .replace("\n", "\r\n")
            .getBytes(StandardCharsets.US_ASCII);
    byte[] answer = new byte[head.length + body.length];
    System.arraycopy(head, 0, answer, 0, head.length);
    System.arraycopy(body, 0, answer, head.length, body.length);
    return answer;
  }

  private static byte[] body(Problem problem) {
    try {
      return JSON.writeValueAsBytes(problem);
    } catch (JsonProcessingException impossible) {
      throw new IllegalStateException("A problem can always be written", impossible);
    }
  }
}
