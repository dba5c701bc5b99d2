package org.standoff.rest.catalogue;

import jakarta.ws.rs.Priorities;
import jakarta.ws.rs.container.ContainerResponseContext;
import jakarta.ws.rs.core.HttpHeaders;
import org.jboss.resteasy.reactive.server.ServerResponseFilter;
import org.standoff.rest.http.Tagged;

/** Leads from an item to the schema that describes its members (RFC 8288). */
public class SchemaLinks {

  /** Response filters run in descending order, and the tag replaces the item by its bytes. */
  @ServerResponseFilter(priority = Priorities.USER + 100)
  public void link(ContainerResponseContext response) {
    if (response.getEntity() instanceof Tagged tagged
        && tagged.body() instanceof CatalogueItem item) {
      response
          .getHeaders()
          .add(
              HttpHeaders.LINK,
              "<" + SchemasResource.address(item.kind()) + ">; rel=\"describedby\"");
    }
  }
}
