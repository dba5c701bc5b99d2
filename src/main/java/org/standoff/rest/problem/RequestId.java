package org.standoff.rest.problem;

import io.vertx.ext.web.RoutingContext;
import java.util.UUID;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/** The name of one request, in its answer, in every problem and in the log. */
public final class RequestId {

  public static final String HEADER = "Request-Id";

  private static final String KEY = RequestId.class.getName();
  private static final Pattern UUID_FORM =
      Pattern.compile("[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}");

  private RequestId() {}

  /** The caller's own, if it is a UUID in lower case; a new one if not. */
  public static String given(@Nullable String header) {
    return header != null && UUID_FORM.matcher(header).matches()
        ? header
        : UUID.randomUUID().toString();
  }

  public static void set(RoutingContext request, String id) {
    request.put(KEY, id);
  }

  public static String of(RoutingContext request) {
    return request.get(KEY);
  }
}
