package org.standoff.rest.openapi;

import io.quarkus.smallrye.openapi.OpenApiFilter;
import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.eclipse.microprofile.openapi.OASFactory;
import org.eclipse.microprofile.openapi.OASFilter;
import org.eclipse.microprofile.openapi.models.OpenAPI;
import org.eclipse.microprofile.openapi.models.PathItem;
import org.eclipse.microprofile.openapi.models.headers.Header;
import org.eclipse.microprofile.openapi.models.media.Schema;
import org.eclipse.microprofile.openapi.models.parameters.Parameter;
import org.eclipse.microprofile.openapi.models.responses.APIResponse;
import org.standoff.rest.http.PageRequest;

/** Says which headers answers have for reasons that no single resource knows. */
@OpenApiFilter(stages = OpenApiFilter.RunStage.BUILD, priority = Words.LATE)
public class ResponseHeaders implements OASFilter {

  private static final String LIMITED = "/v1/";
  private static final String OK = "200";
  private static final String UNAUTHENTICATED = "401";

  /** All do; told at what a caller looks for it, as it would be most of the description else. */
  private static final Set<String> TELL_OF_THE_RATE = Set.of(OK, "201", "429");

  private static final Set<String> COME_AGAIN = Set.of("429", "503");

  /** A header, told once and referred to wherever it comes. */
  private enum Told {
    REQUEST_ID(
        "Request-Id",
        true,
        "Names this request in the log; the caller's own where that was a UUID in lower case",
        text("8f14e45f-ceea-467f-9575-6a3b1c2d4e5f").format("uuid")),
    RETRY_AFTER(
        "Retry-After",
        true,
        "After how many seconds to ask again (RFC 9110, 10.2.3)",
        OASFactory.createSchema()
            .addType(Schema.SchemaType.INTEGER)
            .format("int32")
            .minimum(BigDecimal.ONE)
            .examples(List.of(1))),
    WWW_AUTHENTICATE(
        "WWW-Authenticate",
        true,
        "Which credentials are wanted, and what is wrong with those that came (RFC 6750, 3)",
        text("Bearer realm=\"standoff\"")),
    RATE_LIMIT_POLICY(
        "RateLimit-Policy",
        false,
        "How many requests a caller has in how many seconds, at every answer below /v1 where the"
            + " service limits them",
        text("\"requests\";q=600;w=60")),
    RATE_LIMIT(
        "RateLimit",
        false,
        "How many of them are left, and for how many seconds",
        text("\"requests\";r=599;t=60")),
    LINK(
        "Link",
        false,
        "Where the first page of a list is, and the next where there is one (RFC 8288)",
        text("</v1/sources?page_size=10>; rel=\"first\""));

    private final String header;
    private final boolean always;
    private final String description;
    private final Schema schema;

    Told(String header, boolean always, String description, Schema schema) {
      this.header = header;
      this.always = always;
      this.description = description;
      this.schema = schema;
    }

    private static Schema text(String example) {
      return OASFactory.createSchema().addType(Schema.SchemaType.STRING).examples(List.of(example));
    }
  }

  @Override
  public void filterOpenAPI(OpenAPI description) {
    if (description.getPaths() == null || description.getPaths().getPathItems() == null) {
      return;
    }
    for (Told told : Told.values()) {
      description
          .getComponents()
          .addHeader(
              told.header,
              OASFactory.createHeader()
                  .description(told.description)
                  .required(told.always)
                  .schema(told.schema));
    }
    description.getPaths().getPathItems().forEach(ResponseHeaders::complete);
  }

  private static void complete(String path, PathItem item) {
    item.getOperations()
        .values()
        .forEach(
            operation -> {
              boolean paged =
                  operation.getParameters() != null
                      && operation.getParameters().stream()
                          .map(Parameter::getName)
                          .anyMatch(PageRequest.TOKEN::equals);
              operation
                  .getResponses()
                  .getAPIResponses()
                  .forEach((status, response) -> complete(path, status, paged, response));
            });
  }

  private static void complete(String path, String status, boolean paged, APIResponse response) {
    add(response, Told.REQUEST_ID);
    if (COME_AGAIN.contains(status)) {
      add(response, Told.RETRY_AFTER);
    }
    if (status.equals(UNAUTHENTICATED)) {
      add(response, Told.WWW_AUTHENTICATE);
    }
    if (paged && status.equals(OK)) {
      add(response, Told.LINK);
    }
    if (path.startsWith(LIMITED) && TELL_OF_THE_RATE.contains(status)) {
      add(response, Told.RATE_LIMIT_POLICY);
      add(response, Told.RATE_LIMIT);
    }
  }

  private static void add(APIResponse response, Told told) {
    Map<String, Header> all =
        new LinkedHashMap<>(Objects.requireNonNullElse(response.getHeaders(), Map.of()));
    all.put(told.header, OASFactory.createHeader().ref(told.header));
    response.setHeaders(all);
  }
}
