package org.standoff.rest.http;

import jakarta.ws.rs.Priorities;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import java.net.URI;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;

/** Leads from page to page by header too (RFC 8288); addresses are relative to the host. */
public class PageLinks {

  /** Response filters run in descending order, and the tag replaces the page by its bytes. */
  @ServerResponseFilter(priority = Priorities.USER + 100)
  public void link(ContainerRequestContext request, ContainerResponseContext response) {
    if (!(Named.bodyOf(response.getEntity()) instanceof Paged page)) {
      return;
    }
    response.getHeaders().add(HttpHeaders.LINK, link(request, null, "first"));
    if (page.nextPageToken() != null) {
      response.getHeaders().add(HttpHeaders.LINK, link(request, page.nextPageToken(), "next"));
    }
  }

  private static String link(ContainerRequestContext request, String token, String relation) {
    URI asked = request.getUriInfo().getRequestUri();
    String others =
        Stream.of(Objects.requireNonNullElse(asked.getRawQuery(), "").split("&"))
            .filter(part -> !part.isEmpty() && !part.startsWith(PageRequest.TOKEN + "="))
            .collect(Collectors.joining("&"));
    String added = token == null ? "" : PageRequest.TOKEN + "=" + token;
    String query = others.isEmpty() || added.isEmpty() ? others + added : others + "&" + added;
    String target = asked.getRawPath() + (query.isEmpty() ? "" : "?" + query);
    return "<" + target + ">; rel=\"" + relation + "\"";
  }
}
