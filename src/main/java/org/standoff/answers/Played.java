package org.standoff.answers;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.acoustics.Dynamic;
import org.standoff.acoustics.Placement;
import org.standoff.acoustics.SoundPower;
import org.standoff.acoustics.Source;
import org.standoff.acoustics.SourceLevel;

/**
 * A source at one of its placements, as it is played.
 *
 * @param id of the source
 * @param source the source
 * @param placement the placement
 * @param level its level there, dynamic and offset counted
 * @param power the source's sound power as played, where it is known
 */
public record Played(
    String id, Source source, Placement placement, SourceLevel level, Optional<SoundPower> power) {

  /** The catalogue's level, moved by the dynamic and an offset. */
  static Played of(
      Resolved<Source> source,
      Placement placement,
      @Nullable Dynamic dynamic,
      @Nullable Double levelOffsetDb) {
    double offsetDb =
        source.item().dynamicOffsetDb(dynamic == null ? Dynamic.LOUD : dynamic)
            + (levelOffsetDb == null ? 0 : levelOffsetDb);
    return new Played(
            source.id(), source.item(), placement, placement.level(), source.item().soundPower())
        .moved(offsetDb);
  }

  /** The same, louder by some dB. */
  public Played moved(double byDb) {
    SourceLevel moved =
        new SourceLevel(level.atM(), level.peak().plus(byDb), level.longTerm().plus(byDb));
    return new Played(id, source, placement, moved, power.map(p -> new SoundPower(p.db() + byDb)));
  }

  /** The same at a level that somebody told; the power follows the long-term level. */
  public Played at(SourceLevel told) {
    double changeDb =
        told.longTerm().db()
            - level.longTerm().db()
            - placement.radiator().levelChangeDb(level.atM(), told.atM());
    return new Played(
        id, source, placement, told, power.map(p -> new SoundPower(p.db() + changeDb)));
  }
}
