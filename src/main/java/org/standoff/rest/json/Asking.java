package org.standoff.rest.json;

import jakarta.enterprise.context.ApplicationScoped;
import jakarta.ws.rs.core.MultivaluedMap;
import java.io.InputStream;
import java.util.function.Function;
import org.standoff.answers.UnanswerableQuestion;

/**
 * The three ways to ask a calculation: a query string, a body, a batch of lines. Whichever way, a
 * question is one record, and its faults are told where the caller wrote them.
 */
@ApplicationScoped
public class Asking {
  private final RequestReader reader;
  private final Batch batch;

  Asking(RequestReader reader, Batch batch) {
    this.reader = reader;
    this.batch = batch;
  }

  /** Asks by the query of a GET. */
  public <Q, A> A byQuery(
      MultivaluedMap<String, String> query, Class<Q> type, Function<Q, A> answers) {
    Q question = reader.readQuery(query, type);
    try {
      return answers.apply(question);
    } catch (UnanswerableQuestion unanswerable) {
      throw QuestionFaults.inQuery(unanswerable);
    }
  }

  /** Asks by the body of a POST. */
  public <Q, A> A byBody(InputStream body, Class<Q> type, Function<Q, A> answers) {
    return answer(reader.read(body, type), answers);
  }

  /** Asks by a batch, one question a line. */
  public <Q, A> byte[] byLines(
      InputStream body, Class<Q> type, Function<Q, A> answers, String requestId) {
    return batch.answer(body, line -> answer(reader.read(line, type), answers), requestId);
  }

  private static <Q, A> A answer(Q question, Function<Q, A> answers) {
    try {
      return answers.apply(question);
    } catch (UnanswerableQuestion unanswerable) {
      throw QuestionFaults.inBody(unanswerable);
    }
  }
}
