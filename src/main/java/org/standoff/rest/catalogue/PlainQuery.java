package org.standoff.rest.catalogue;

import org.eclipse.microprofile.openapi.annotations.media.Schema;

/**
 * What every list can be narrowed by.
 *
 * @param pack only items of this pack
 * @param q words that all stand in the id, the title or the notes
 */
@Schema(name = "ItemQuery", description = "What a list of items is narrowed by")
public record PlainQuery(
    @Schema(description = "Only items of this pack", examples = "core") String pack,
    @Schema(description = "Words that all stand in the id, the title or the notes") String q)
    implements ItemQuery<Object> {

  @Override
  public boolean keeps(Object value) {
    return true;
  }
}
