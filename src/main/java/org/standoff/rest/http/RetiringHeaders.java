package org.standoff.rest.http;

import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.container.ResourceInfo;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MultivaluedMap;
import java.lang.reflect.Method;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Gives notice of operations that will go: Deprecation (RFC 9745) and Sunset (RFC 8594). */
public class RetiringHeaders {

  /** The description says what goes, and what stands in its place. */
  private static final String CHANGES = "</openapi>; rel=\"deprecation\"";

  private static final String END = "</openapi>; rel=\"sunset\"";

  private static final int FIRST_REFUSAL = 400;

  private static final DateTimeFormatter HTTP_DATE =
      DateTimeFormatter.ofPattern("EEE, dd MMM yyyy HH:mm:ss 'GMT'", Locale.ROOT)
          .withZone(ZoneOffset.UTC);

  @ServerResponseFilter
  public void giveNotice(ContainerResponseContext response, ResourceInfo resource) {
    if (response.getStatus() >= FIRST_REFUSAL) {
      // no resource may have been found, and nothing is used that could be retired
      return;
    }
    Method method = resource.getResourceMethod();
    Retiring retiring = method == null ? null : method.getAnnotation(Retiring.class);
    if (retiring == null) {
      return;
    }
    MultivaluedMap<String, Object> headers = response.getHeaders();
    headers.putSingle("Deprecation", "@" + begin(retiring.since()).getEpochSecond());
    headers.putSingle("Sunset", HTTP_DATE.format(begin(retiring.until())));
    headers.add(HttpHeaders.LINK, CHANGES);
    headers.add(HttpHeaders.LINK, END);
    headers.add(HttpHeaders.LINK, "<" + retiring.instead() + ">; rel=\"successor-version\"");
  }

  private static Instant begin(String day) {
    return LocalDate.parse(day).atStartOfDay(ZoneOffset.UTC).toInstant();
  }
}
