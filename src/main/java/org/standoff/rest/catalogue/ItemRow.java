package org.standoff.rest.catalogue;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * An item in a list.
 *
 * @param id pack/item
 * @param title the name for people
 * @param etag the item's entity tag at its own address
 * @param figures what its kind tells in lists
 */
@Schema(
    name = "ItemRow",
    additionalProperties = Schema.True.class,
    description = "An item in a list, with the figures that its kind tells in lists")
public record ItemRow(
    @Schema(description = "pack/item", examples = "core/ldc-multi-1") String id,
    @Schema(description = "The name for people") String title,
    @Schema(description = "The entity tag that the item has at its own address") String etag,
    @Schema(hidden = true) Map<String, Object> figures) {

  public ItemRow {
    figures = Collections.unmodifiableMap(new LinkedHashMap<>(figures));
  }

  /** Written as members of the row itself. */
  @Override
  @JsonAnyGetter
  public Map<String, Object> figures() {
    return figures;
  }
}
