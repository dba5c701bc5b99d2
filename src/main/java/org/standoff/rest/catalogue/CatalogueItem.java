package org.standoff.rest.catalogue;

import com.fasterxml.jackson.annotation.JsonAnyGetter;
import com.fasterxml.jackson.annotation.JsonIgnore;
import com.fasterxml.jackson.databind.JsonNode;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * An item as its file describes it.
 *
 * @param id pack/item
 * @param revision digest of the file
 * @param etag its entity tag
 * @param kind name of its kind
 * @param content what stands in the file
 */
@Schema(
    name = "CatalogueItem",
    additionalProperties = Schema.True.class,
    description =
        "An item: what stands in its file, in the names and units of the file, which the schema of"
            + " its kind under /schemas describes; and these")
public record CatalogueItem(
    @Schema(description = "pack/item", examples = "core/ldc-multi-1") String id,
    @Schema(description = "Digest of the file: changes with every change of it") String revision,
    @Schema(description = "Entity tag of this answer") String etag,
    @JsonIgnore @Schema(hidden = true) String kind,
    @Schema(hidden = true) Map<String, JsonNode> content) {

  static final String ABOUT =
      "What stands in the file, in its own names and units, with the item's id, revision and tag.";

  public CatalogueItem {
    content = Collections.unmodifiableMap(new LinkedHashMap<>(content));
  }

  /** Written as members of the item itself. */
  @Override
  @JsonAnyGetter
  public Map<String, JsonNode> content() {
    return content;
  }
}
