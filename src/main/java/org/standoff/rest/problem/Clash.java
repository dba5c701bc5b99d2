package org.standoff.rest.problem;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * A sound request that can't be met as things stand. It carries what stands in its way, as members
 * of the problem beside the usual ones (RFC 9457, 3.2), and headers where a caller needs them.
 */
public final class Clash extends RuntimeException {

  private static final long serialVersionUID = 1L;

  private final transient @Nullable Object inTheWay;
  private final transient Map<String, String> headers;

  public Clash(String detail) {
    this(detail, null, Map.of());
  }

  private Clash(String detail, @Nullable Object inTheWay, Map<String, String> headers) {
    super(detail);
    this.inTheWay = inTheWay;
    this.headers = Map.copyOf(headers);
  }

  /** The same with what stands in the way: a record whose members become those of the problem. */
  public Clash with(Object members) {
    return new Clash(getMessage(), members, headers);
  }

  /** The same with one more header. */
  public Clash header(String name, String value) {
    Map<String, String> more = new LinkedHashMap<>(headers);
    more.put(name, value);
    return new Clash(getMessage(), inTheWay, more);
  }

  Optional<Object> inTheWay() {
    return Optional.ofNullable(inTheWay);
  }

  Map<String, String> headers() {
    return headers;
  }
}
