package org.standoff.rest.http;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;

/**
 * One page of a list.
 *
 * @param items what stands on this page
 * @param nextPageToken what to send as {@code page_token} for the next one; absent at the end
 */
@JsonInclude(JsonInclude.Include.NON_NULL)
public record Page<T>(
    @Schema(description = "What stands on this page") List<T> items,
    @Schema(description = "What to send as page_token for the next page; absent at the end")
        @Nullable String nextPageToken)
    implements Paged {

  public Page {
    items = List.copyOf(items);
  }
}
