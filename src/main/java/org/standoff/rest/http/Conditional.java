package org.standoff.rest.http;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import io.vertx.core.http.HttpVersion;
import io.vertx.ext.web.RoutingContext;
import jakarta.ws.rs.container.ContainerRequestContext;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.container.ResourceInfo;
import jakarta.ws.rs.core.HttpHeaders;
import jakarta.ws.rs.core.MediaType;
import jakarta.ws.rs.core.MultivaluedMap;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.eclipse.microprofile.config.inject.ConfigProperty;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.jspecify.annotations.Nullable;
import org.standoff.rest.security.CurrentCaller;
import org.standoff.rest.security.ReadersMustBeKnown;

/**
 * Gives every successful answer its entity tag, says how long it may be kept, and answers 304 where
 * the caller has it already (on GET and HEAD only: RFC 9110 knows no 304 elsewhere).
 */
public class Conditional {

  private static final int OK = 200;
  private static final int CREATED = 201;
  private static final int NOT_MODIFIED = 304;
  private static final String NO_STORE = "no-store";
  private static final String BY_FORM = "Accept, Accept-Encoding";
  private static final String BY_CALLER = BY_FORM + ", Authorization";

  private final ObjectMapper json;
  private final Keeping keeping;
  private final CurrentCaller caller;
  private final String keepers;

  Conditional(
      ObjectMapper json,
      Keeping keeping,
      CurrentCaller caller,
      @ConfigProperty(name = ReadersMustBeKnown.SETTING) boolean readersAreKnown) {
    this.json = json;
    this.keeping = keeping;
    this.caller = caller;
    // a cache that many share would hand it to those who have no token
    this.keepers = readersAreKnown ? "private" : "public";
  }

  @ServerResponseFilter
  public void tag(
      ContainerRequestContext request,
      ContainerResponseContext response,
      ResourceInfo resource,
      RoutingContext routing)
      throws JsonProcessingException {
    MultivaluedMap<String, Object> headers = response.getHeaders();
    Named named = response.getEntity() instanceof Named given ? given : null;
    boolean made = response.getStatus() == CREATED && named != null;
    if (response.getStatus() != OK && !made) {
      headers.putSingle(HttpHeaders.CACHE_CONTROL, NO_STORE);
      return;
    }
    boolean reading = isReading(request.getMethod());
    headers.putSingle(
        HttpHeaders.CACHE_CONTROL, keeping.isForbidden() ? NO_STORE : caching(reading, resource));
    headers.putSingle(HttpHeaders.VARY, caller.wasAskedFor() ? BY_CALLER : BY_FORM);
    MediaType type = response.getMediaType();
    byte[] bytes = bytes(Named.bodyOf(response.getEntity()), type);
    if (bytes == null) {
      return;
    }
    HttpVersion version = routing.request().version();
    String form = String.valueOf(type);
    String plain = named == null ? EntityTags.of(bytes, form) : named.tagOf(bytes, form);
    String tag =
        ContentCoding.of(version, request.getHeaderString(HttpHeaders.ACCEPT_ENCODING))
            .map(coding -> EntityTags.inCoding(plain, coding))
            .orElse(plain);
    String known = request.getHeaderString(HttpHeaders.IF_NONE_MATCH);
    boolean isKnown = EntityTags.matches(known, tag);
    // lists tell it so, and whoever names that has that one
    boolean isKnownPlain = !isKnown && named instanceof Tagged && EntityTags.matches(known, plain);
    headers.putSingle(HttpHeaders.ETAG, isKnownPlain ? plain : tag);
    if (reading && (isKnown || isKnownPlain)) {
      response.setStatus(NOT_MODIFIED);
      response.setEntity(null);
    } else {
      // written once: what was digested is what is sent
      response.setEntity(bytes, response.getEntityAnnotations(), type);
    }
  }

  private static boolean isReading(String method) {
    return method.equals("GET") || method.equals("HEAD");
  }

  private String caching(boolean reading, ResourceInfo resource) {
    return Optional.ofNullable(resource.getResourceMethod())
        .map(method -> method.getAnnotation(CacheFor.class))
        .map(CacheFor::seconds)
        .map(s -> keepers + ", max-age=" + s + ", stale-while-revalidate=" + s)
        .orElse(reading ? "no-cache" : NO_STORE);
  }

  private byte @Nullable [] bytes(@Nullable Object entity, @Nullable MediaType type)
      throws JsonProcessingException {
    if (entity instanceof byte[] raw) {
      return raw;
    }
    if (entity instanceof String text) {
      return text.getBytes(StandardCharsets.UTF_8);
    }
    boolean isJson =
        type != null && (type.getSubtype().equals("json") || type.getSubtype().endsWith("+json"));
    return entity != null && isJson ? json.writeValueAsBytes(entity) : null;
  }
}
