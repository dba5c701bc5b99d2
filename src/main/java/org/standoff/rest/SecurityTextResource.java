package org.standoff.rest;

import jakarta.ws.rs.GET;
import jakarta.ws.rs.NotFoundException;
import jakarta.ws.rs.Path;
import jakarta.ws.rs.Produces;
import jakarta.ws.rs.core.MediaType;
import java.net.URI;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Collectors;
import org.eclipse.microprofile.openapi.annotations.Operation;
import org.standoff.rest.http.CacheFor;
import org.standoff.rest.problem.Problem;

/** Whom to tell of a weakness, where those who run the service have said so (RFC 9116). */
@Path("/.well-known/security.txt")
public class SecurityTextResource {

  /** RFC 9116, 2.5.5 wants less than a year. */
  private static final int GOOD_FOR_DAYS = 180;

  private static final int FRESH_S = 3600;

  private final List<URI> contacts;

  SecurityTextResource(SecurityContactSettings settings) {
    this.contacts = settings.contact().orElse(List.of());
  }

  @GET
  @Produces(MediaType.TEXT_PLAIN)
  @CacheFor(seconds = FRESH_S)
  @Operation(hidden = true)
  public String text() {
    if (contacts.isEmpty()) {
      throw new NotFoundException();
    }
    return contacts.stream().map(uri -> "Contact: " + uri + "\n").collect(Collectors.joining())
        + ("Expires: " + expires(Instant.now()) + "\n")
        + ("Preferred-Languages: " + Problem.LANGUAGE + "\n");
  }

  /** At the end of a day, so that the text and its tag stay as they are for one. */
  static Instant expires(Instant now) {
    return now.atOffset(ZoneOffset.UTC)
        .truncatedTo(ChronoUnit.DAYS)
        .plusDays(GOOD_FOR_DAYS)
        .toInstant();
  }
}
