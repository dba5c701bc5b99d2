package org.standoff.catalogue.kind;

import java.util.Map;
import org.standoff.acoustics.PatternName;
import org.standoff.acoustics.Polar;
import org.standoff.acoustics.RmsSpl;
import org.standoff.catalogue.Sheet;
import org.standoff.chain.Address;
import org.standoff.chain.Basis;
import org.standoff.chain.Filter;
import org.standoff.chain.FilterPlace;
import org.standoff.chain.MaximumSpl;
import org.standoff.chain.Microphone;
import org.standoff.chain.MicrophoneOutput;
import org.standoff.chain.PatternFigures;
import org.standoff.chain.Transducer;

/** Makes a microphone of its sheet. Also reads what a question describes in place of an id. */
public final class MicrophoneReader {

  /** What a maximum SPL that nobody states may be off by, up and down, in dB (common practice). */
  private static final double ASSUMED_MAXIMUM_SPREAD_DB = 3;

  private MicrophoneReader() {}

  /**
   * @param id of the microphone, or {@code inline}
   * @param sheet that has passed the schema of microphones
   */
  public static Microphone read(String id, Sheet sheet) {
    Basis basis = sheet.word("basis", Basis::ofId);
    Map<String, Basis> exceptions = sheet.words("basis_of", Basis::ofId);
    return new Microphone(
        id,
        sheet.text("title"),
        sheet.word("transducer", Transducer::ofId),
        sheet.word("address", Address::ofId),
        sheet.optionalNumber("diaphragm_mm"),
        sheet.object("powering", LineReader::powering),
        sheet.number("source_impedance_ohm"),
        sheet.optionalNumber("rated_load_ohm"),
        maximumSpl(sheet, exceptions.getOrDefault("maximum_spl", basis)),
        sheet.optionalNumber("capsule_limit_db_spl"),
        sheet.list("pads", LineReader::pad),
        sheet.list("high_passes", MicrophoneReader::filter),
        sheet.list("outputs", MicrophoneReader::output),
        sheet.octaves("on_axis_response_db"),
        sheet.optionalNumber("rejection_cap_db").orElse(Polar.DEFAULT_REJECTION_CAP_DB),
        sheet.optionalNumber("mass_g"),
        sheet.optionalNumber("length_mm"),
        basis,
        exceptions);
  }

  private static MaximumSpl maximumSpl(Sheet sheet, Basis basis) {
    double usualSpreadDb = basis == Basis.ASSUMED ? ASSUMED_MAXIMUM_SPREAD_DB : 0;
    double spreadDb = sheet.optionalNumber("maximum_spl_spread_db").orElse(usualSpreadDb);
    return sheet.object(
        "maximum_spl",
        maximum ->
            new MaximumSpl(
                new RmsSpl(maximum.number("level_db_spl")),
                maximum.optionalNumber("thd_percent"),
                spreadDb,
                basis));
  }

  private static Filter filter(Sheet filter) {
    return new Filter(LineReader.highPass(filter), filter.word("position", FilterPlace::ofId));
  }

  private static MicrophoneOutput output(Sheet output) {
    return new MicrophoneOutput(
        output.text("id"), output.list("patterns", MicrophoneReader::pattern));
  }

  private static PatternFigures pattern(Sheet pattern) {
    PatternName name = pattern.word("pattern", PatternName::ofId);
    Polar ideal = name.ideal();
    double omniPart = pattern.optionalNumber("omni_part").orElse(ideal.omniPart());
    return new PatternFigures(
        name,
        new Polar(omniPart, ideal.halfSpace()),
        pattern.octaves("omni_part_per_octave"),
        pattern.number("sensitivity_mv_per_pa"),
        pattern.optionalNumber("self_noise_dba"));
  }
}
