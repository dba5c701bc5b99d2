package org.standoff.rest.http;

import jakarta.ws.rs.core.MultivaluedMap;
import jakarta.ws.rs.core.UriInfo;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.standoff.rest.problem.Fault;
import org.standoff.rest.problem.FaultCode;
import org.standoff.rest.problem.InvalidRequest;

/**
 * Which page of a list is wanted. A list is paged by the keys of its items, so that one that
 * changes meanwhile loses or doubles nothing.
 *
 * @param size how many items at most
 * @param filter fingerprint of everything else in the query
 * @param after the key to begin after; null for the first page
 */
public record PageRequest(int size, int filter, @Nullable String after) {

  public static final String SIZE = "page_size";
  public static final String TOKEN = "page_token";
  public static final int DEFAULT_SIZE = 50;
  public static final int LARGEST_SIZE = 200;

  /** Up to here a size is cut to the largest; beyond, it is a mistake. */
  public static final int LARGEST_ASKED = 999_999_999;

  /** Reads {@value #SIZE} and {@value #TOKEN}; a size beyond the largest is cut to it. */
  public static PageRequest of(UriInfo uri) {
    MultivaluedMap<String, String> query = uri.getQueryParameters();
    List<Fault> faults = new ArrayList<>();
    int size = size(query.getFirst(SIZE), faults);
    int filter = fingerprint(query);
    String after = after(query.getFirst(TOKEN), filter, faults);
    if (!faults.isEmpty()) {
      throw new InvalidRequest(faults);
    }
    return new PageRequest(size, filter, after);
  }

  /** The page of a list that is in ascending order of its keys. */
  public <T> Page<T> of(List<T> ordered, Function<T, String> key) {
    List<T> rest =
        after == null
            ? ordered
            : ordered.stream().filter(item -> key.apply(item).compareTo(after) > 0).toList();
    if (rest.size() <= size) {
      return new Page<>(rest, null);
    }
    List<T> items = rest.subList(0, size);
    String last = key.apply(items.get(size - 1));
    return new Page<>(items, new PageToken(filter, last).text());
  }

  private static int size(@Nullable String text, List<Fault> faults) {
    if (text == null) {
      return DEFAULT_SIZE;
    }
    int size = text.matches("\\d{1,9}") ? Integer.parseInt(text) : 0;
    if (size < 1) {
      faults.add(
          Fault.ofParameter(SIZE, FaultCode.OUT_OF_RANGE, "A page has at least one item.")
              .found(text)
              .allowed("1 to " + LARGEST_SIZE));
    }
    return Math.min(size, LARGEST_SIZE);
  }

  private static @Nullable String after(@Nullable String text, int filter, List<Fault> faults) {
    if (text == null) {
      return null;
    }
    PageToken token = PageToken.parse(text).filter(read -> read.filter() == filter).orElse(null);
    if (token == null) {
      faults.add(
          Fault.ofParameter(
                  TOKEN,
                  FaultCode.WRONG_FORM,
                  "This token is not from a page of this list under this filter; begin without one.")
              .found(text)
              .allowed("next_page_token of an earlier page, with the same other parameters"));
      return null;
    }
    return token.after();
  }

  private static int fingerprint(MultivaluedMap<String, String> query) {
    TreeMap<String, List<String>> others = new TreeMap<>(query);
    others.remove(SIZE);
    others.remove(TOKEN);
    return others.hashCode();
  }
}
