package org.standoff.rest.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.exc.MismatchedInputException;
import jakarta.enterprise.context.ApplicationScoped;
import jakarta.validation.Validator;
import jakarta.ws.rs.core.MultivaluedMap;
import java.io.IOException;
import java.io.InputStream;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.standoff.rest.http.WholeBody;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.InvalidRequest;
import org.standoff.rest.problem.ProblemMember;
import org.standoff.rest.problem.ProblemType;

/**
 * Reads a request into a record, or says everything that is wrong with it at once: unknown members,
 * wrong types, unknown values, and what the constraints on the record refuse, each at its place.
 * The members of request records are boxed or objects, so that a missing one is null and not zero.
 */
@ApplicationScoped
public class RequestReader {

  private static final String LIMITS =
      "The body goes beyond a limit: at most %d levels deep, texts of %d characters, numbers of %d."
          .formatted(JsonSetup.DEEPEST, JsonSetup.LONGEST_TEXT, JsonSetup.LONGEST_NUMBER);

  /** The library goes on to tell which switch of its own would let it pass, and where it began. */
  private static final List<String> NOT_OURS =
      List.of(": enable `", ": maybe a ", " \\(start marker");

  private static final Pattern CHARACTER_CODE =
      Pattern.compile(" \\(code \\d+[^)]*\\)|, code \\d+");

  private static final Pattern QUOTED = Pattern.compile("'(.+?)'(?!\\w)");

  private final ObjectMapper json;
  private final Binding fromBody;
  private final Binding fromQuery;

  RequestReader(ObjectMapper json, Validator validator) {
    this.json = json;
    this.fromBody = new Binding(json, validator);
    this.fromQuery = new Binding(QueryMapper.from(json), validator);
  }

  public <T> T read(InputStream body, Class<T> type) {
    return read(body, type, Map.of());
  }

  /**
   * The same of a body that may be what was read at the same address.
   *
   * @param addressed what the address tells, by the read-only member that tells the same
   */
  public <T> T read(InputStream body, Class<T> type, Map<String, String> addressed) {
    return fromBody.bind(tree(WholeBody.of(body)), type, addressed);
  }

  public <T> T read(byte[] body, Class<T> type) {
    return read(tree(body), type);
  }

  public <T> T read(JsonNode body, Class<T> type) {
    return fromBody.bind(body, type, Map.of());
  }

  /**
   * Reads the query of a GET into the record that its POST twin takes as a body: {@code a_b} is the
   * member of that name, {@code a.b} member b of member a, and a repeated parameter a list.
   *
   * @param elsewhere names that something else reads, such as the page
   */
  public <T> T readQuery(
      MultivaluedMap<String, String> query, Class<T> type, Set<String> elsewhere) {
    QueryTree tree = QueryTree.of(query, elsewhere);
    if (!tree.faults().isEmpty()) {
      throw new InvalidRequest(tree.faults());
    }
    try {
      return fromQuery.bind(tree.root(), type, Map.of());
    } catch (InvalidRequest invalid) {
      throw new InvalidRequest(
          invalid.type(), invalid.faults().stream().map(QueryTree::asParameter).toList());
    }
  }

  public <T> T readQuery(MultivaluedMap<String, String> query, Class<T> type) {
    return readQuery(query, type, Set.of());
  }

  private JsonNode tree(byte[] body) {
    try {
      JsonNode tree = json.readTree(body);
      if (tree.isMissingNode()) {
        throw malformed(Fault.atLine(1, 1, "The body is empty; one JSON object is wanted."));
      }
      return tree;
    } catch (StreamConstraintsException beyond) {
      throw malformed(
          at(beyond, LIMITS)
              .with(ProblemMember.MAX_LEVELS, JsonSetup.DEEPEST)
              .with(ProblemMember.MAX_TEXT_CHARACTERS, JsonSetup.LONGEST_TEXT)
              .with(ProblemMember.MAX_NUMBER_CHARACTERS, JsonSetup.LONGEST_NUMBER));
    } catch (MismatchedInputException more) {
      throw malformed(at(more, "There is more after the first JSON value; one is wanted."));
    } catch (JsonProcessingException unreadable) {
      throw malformed(inOurWords(unreadable));
    } catch (IOException broken) {
      // bytes that are no UTF-8 at all
      throw malformed(Fault.atLine(1, 1, "The body is not text in UTF-8."));
    }
  }

  private static Fault inOurWords(JsonProcessingException unreadable) {
    String words = unreadable.getOriginalMessage();
    for (String theirs : NOT_OURS) {
      words = words.split(theirs, 2)[0];
    }
    words = CHARACTER_CODE.matcher(words).replaceAll("");
    Matcher quoted = QUOTED.matcher(words);
    return at(unreadable, words).found(quoted.find() ? quoted.group(1) : null);
  }

  private static Fault at(JsonProcessingException unreadable, String detail) {
    var place = unreadable.getLocation();
    return place == null
        ? Fault.atLine(1, 1, detail)
        : Fault.atLine(place.getLineNr(), place.getColumnNr(), detail);
  }

  private static InvalidRequest malformed(Fault fault) {
    return new InvalidRequest(ProblemType.MALFORMED_BODY, List.of(fault));
  }
}
