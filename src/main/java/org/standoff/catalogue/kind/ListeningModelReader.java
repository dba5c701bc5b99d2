package org.standoff.catalogue.kind;

import org.standoff.catalogue.Sheet;
import org.standoff.pairs.listening.LimitPolyline;
import org.standoff.pairs.listening.LinearFactors;
import org.standoff.pairs.listening.ListeningModel;
import org.standoff.pairs.listening.MeasuredPoints;
import org.standoff.pairs.listening.StraightTrade;
import org.standoff.pairs.listening.Study;
import org.standoff.pairs.listening.TwoRegion;

/** Makes a listening model of its sheet. Also reads what a question describes in place of an id. */
public final class ListeningModelReader {

  private ListeningModelReader() {}

  /**
   * @param id of the model, or {@code inline}
   * @param sheet that has passed the schema of listening models
   */
  public static ListeningModel read(String id, Sheet sheet) {
    Study study =
        new Study(
            id,
            sheet.text("title"),
            sheet.text("study"),
            sheet.text("note"),
            sheet.optionalNumber("meant_up_to_pct"));
    String method = sheet.text("method");
    return switch (method) {
      case "two-region" ->
          new TwoRegion(
              study,
              sheet.number("level_factor_pct_per_db"),
              sheet.number("time_factor_pct_per_ms"),
              sheet.number("knee_pct"),
              sheet.number("share_beyond_knee"));
      case "linear-factors" ->
          new LinearFactors(
              study,
              sheet.number("level_factor_pct_per_db"),
              sheet.number("time_factor_pct_per_ms"));
      case "straight-trade" ->
          new StraightTrade(study, sheet.number("side_level_db"), sheet.number("side_time_ms"));
      case "points" ->
          new MeasuredPoints(
              study,
              sheet.list("level_points", point -> point(point, "level_db")),
              sheet.list("time_points", point -> point(point, "time_ms")),
              sheet.number("half_base_deg"));
      case "limit-polyline" ->
          new LimitPolyline(study, sheet.list("limit", ListeningModelReader::corner));
      default -> throw new IllegalArgumentException("'" + method + "' is no method");
    };
  }

  private static MeasuredPoints.Point point(Sheet point, String difference) {
    return new MeasuredPoints.Point(point.number(difference), point.number("image_deg"));
  }

  private static LimitPolyline.Corner corner(Sheet corner) {
    return new LimitPolyline.Corner(corner.number("level_db"), corner.number("time_ms"));
  }
}
