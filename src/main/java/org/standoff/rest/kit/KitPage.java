package org.standoff.rest.kit;

import com.fasterxml.jackson.annotation.JsonInclude;
import java.util.List;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.jspecify.annotations.Nullable;
import org.standoff.rest.http.Page;
import org.standoff.rest.http.Paged;

/**
 * One page of the units of a house.
 *
 * @param kitEtag the entity tag of the whole kit
 * @param items what stands on this page
 * @param nextPageToken what to send as {@code page_token} for the next one; absent at the end
 */
@Schema(name = "PageOfUnits")
@JsonInclude(JsonInclude.Include.NON_NULL)
public record KitPage(
    @Schema(
            description =
                "Entity tag of the whole kit, to be sent as If-Match when all of it is published,"
                    + " whatever part of it this answer is")
        String kitEtag,
    @Schema(description = "What stands on this page") List<UnitView> items,
    @Schema(description = "What to send as page_token for the next page; absent at the end")
        @Nullable String nextPageToken)
    implements Paged {

  static KitPage of(String kitEtag, Page<UnitView> page) {
    return new KitPage(kitEtag, page.items(), page.nextPageToken());
  }
}
