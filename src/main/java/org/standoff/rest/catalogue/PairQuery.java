package org.standoff.rest.catalogue;

import jakarta.validation.constraints.Size;
import org.eclipse.microprofile.openapi.annotations.media.Schema;
import org.standoff.acoustics.PatternName;
import org.standoff.pairs.PairLayout;
import org.standoff.pairs.Technique;

/**
 * What the list of stereo layouts is narrowed by.
 *
 * @param pack only items of this pack
 * @param q words that all stand in the id, the title or the notes
 * @param technique how it makes its image
 * @param pattern it works with microphones of this pattern
 */
@Schema(name = "PairQuery", description = "What the list of stereo layouts is narrowed by")
public record PairQuery(
    @Schema(description = "Only items of this pack", examples = "core") @Size(max = 64) String pack,
    @Schema(description = "Words that all stand in the id, the title or the notes") @Size(max = 200)
        String q,
    @Schema(description = "How it makes its image") Technique technique,
    @Schema(description = "It works with microphones of this pattern") PatternName pattern)
    implements ItemQuery<PairLayout> {

  @Override
  public boolean keeps(PairLayout layout) {
    return (technique == null || layout.technique() == technique)
        && (pattern == null || layout.patterns().contains(pattern));
  }
}
