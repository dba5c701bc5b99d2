package org.standoff.rest.catalogue;

import jakarta.validation.constraints.Size;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.acoustics.Purpose;
import org.standoff.acoustics.Source;

/**
 * What the list of sources is narrowed by.
 *
 * @param pack only items of this pack
 * @param q words that all stand in the id, the title or the notes
 * @param purpose it has a placement for this purpose
 */
@Schema(name = "SourceQuery", description = "What the list of sources is narrowed by")
public record SourceQuery(
    @Schema(description = "Only items of this pack", examples = "core") @Size(max = 64) String pack,
    @Schema(description = "Words that all stand in the id, the title or the notes") @Size(max = 200)
        String q,
    @Schema(description = "It has a placement for this purpose") Purpose purpose)
    implements ItemQuery<Source> {

  @Override
  public boolean keeps(Source source) {
    return purpose == null
        || source.placements().values().stream()
            .anyMatch(placement -> placement.purpose() == purpose);
  }
}
