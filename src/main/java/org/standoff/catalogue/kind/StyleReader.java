package org.standoff.catalogue.kind;

import org.standoff.acoustics.Purpose;
import org.standoff.advice.HouseStyle;
import org.standoff.catalogue.Sheet;

/** Makes a house's style of its sheet. Also reads what a question describes in place of an id. */
public final class StyleReader {

  private StyleReader() {}

  /**
   * @param id of the style, or {@code inline}
   * @param sheet that has passed the schema of styles
   */
  public static HouseStyle read(String id, Sheet sheet) {
    return new HouseStyle(
        id,
        sheet.text("title"),
        sheet.number("guarded_percentile"),
        sheet.number("wanted_headroom_db"),
        sheet.number("target_peak_dbfs"),
        sheet.number("allowed_filter_loss_db"),
        sheet.number("noise_distance_db"),
        sheet.figures("isolation_weight", Purpose::ofId),
        sheet.number("evenness_weight"),
        sheet.object("surrounding", StyleReader::surrounding));
  }

  private static HouseStyle.Surrounding surrounding(Sheet surrounding) {
    return new HouseStyle.Surrounding(
        surrounding.optionalText("room"), surrounding.optionalNumber("neighbour_level_db_spl"));
  }
}
