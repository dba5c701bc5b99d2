package org.standoff.rest.catalogue;

import jakarta.validation.constraints.Size;
import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * What every list can be narrowed by.
 *
 * @param pack only items of this pack
 * @param q words that all stand in the id, the title or the notes
 */
@Schema(name = "PlainQuery", description = "What a list of items is narrowed by")
public record PlainQuery(
    @Schema(description = "Only items of this pack", examples = "core") @Size(max = 64) String pack,
    @Schema(description = "Words that all stand in the id, the title or the notes") @Size(max = 200)
        String q)
    implements ItemQuery<Object> {

  @Override
  public boolean keeps(Object value) {
    return true;
  }
}
