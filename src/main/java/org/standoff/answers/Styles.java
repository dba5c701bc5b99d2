package org.standoff.answers;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.standoff.advice.HouseStyle;

/** Resolves the house style and what the question says against it. */
public final class Styles {
  /** The style of a house that has not written its own. */
  static final String USUAL = "core/house-default";

  private Styles() {}

  /** The style, with the question's own figures in place of its. */
  public static Optional<HouseStyle> resolve(
      References references,
      @Nullable JsonNode style,
      @Nullable Double guardedPercentile,
      @Nullable Double wantedHeadroomDb,
      @Nullable Double targetPeakDbfs) {
    Optional<Resolved<HouseStyle>> found =
        style == null
            ? references.byId(HouseStyle.class, USUAL, "/style")
            : references.resolve(HouseStyle.class, style, "/style");
    return found
        .map(Resolved::item)
        .map(
            item ->
                new HouseStyle(
                    item.id(),
                    item.title(),
                    guardedPercentile == null ? item.guardedPercentile() : guardedPercentile,
                    wantedHeadroomDb == null ? item.wantedHeadroomDb() : wantedHeadroomDb,
                    targetPeakDbfs == null ? item.targetPeakDbfs() : targetPeakDbfs,
                    item.allowedFilterLossDb(),
                    item.noiseDistanceDb(),
                    item.isolationWeight(),
                    item.evennessWeight(),
                    item.surrounding()));
  }
}
