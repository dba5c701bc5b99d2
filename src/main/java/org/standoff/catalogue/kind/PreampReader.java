package org.standoff.catalogue.kind;

import org.standoff.catalogue.Sheet;
import org.standoff.chain.GainRange;
import org.standoff.chain.InputNoise;
import org.standoff.chain.Preamp;

/** Makes a preamp of its sheet. Also reads what a question describes in place of an id. */
public final class PreampReader {

  private PreampReader() {}

  /**
   * @param id of the preamp, or {@code inline}
   * @param sheet that has passed the schema of preamps
   */
  public static Preamp read(String id, Sheet sheet) {
    return new Preamp(
        id,
        sheet.text("title"),
        sheet.whole("inputs"),
        sheet.object("gain", PreampReader::gain),
        sheet.number("maximum_input_dbu"),
        sheet.number("maximum_output_dbu"),
        sheet.optionalNumber("input_impedance_ohm"),
        sheet.object("noise", PreampReader::noise),
        sheet.numbers("pads_db"),
        sheet.list("high_passes", LineReader::highPass),
        sheet.object("phantom", PreampReader::bankSize),
        sheet.number("full_scale_dbu"));
  }

  private static GainRange gain(Sheet gain) {
    return new GainRange(gain.number("least_db"), gain.number("most_db"), gain.number("step_db"));
  }

  private static InputNoise noise(Sheet noise) {
    return new InputNoise(
        noise.number("source_ohm"),
        noise.list(
            "at", point -> new InputNoise.Point(point.number("gain_db"), point.number("ein_dbu"))));
  }

  private static int bankSize(Sheet phantom) {
    return phantom.flag("available") ? Math.max(1, phantom.whole("bank_size")) : 0;
  }
}
