package org.standoff.catalogue.kind;

import java.util.Arrays;
import java.util.Optional;
import org.standoff.acoustics.AirJet;
import org.standoff.acoustics.Companion;
import org.standoff.acoustics.Directivity;
import org.standoff.acoustics.Dynamic;
import org.standoff.acoustics.Placement;
import org.standoff.acoustics.Purpose;
import org.standoff.acoustics.Radiator;
import org.standoff.acoustics.RmsSpl;
import org.standoff.acoustics.SoundPower;
import org.standoff.acoustics.Source;
import org.standoff.acoustics.SourceLevel;
import org.standoff.acoustics.SourceSide;
import org.standoff.acoustics.Spectrum;
import org.standoff.acoustics.SpectrumClass;
import org.standoff.acoustics.UncertainDb;
import org.standoff.catalogue.Sheet;

/** Makes a source of its sheet. */
public final class SourceReader {

  private SourceReader() {}

  /**
   * @param id of the source, or {@code inline}
   * @param sheet that has passed the schema of sources
   */
  public static Source read(String id, Sheet sheet) {
    Optional<SoundPower> power =
        sheet.has("sound_power_db")
            ? Optional.of(new SoundPower(sheet.number("sound_power_db")))
            : Optional.empty();
    return new Source(
        id,
        sheet.text("title"),
        sheet.text("kind").equals("compound"),
        sheet.texts("members"),
        sheet.texts("doubles"),
        sheet.optionalNumber("extent_m"),
        power,
        sheet.figures("dynamics_db", Dynamic::ofId),
        sheet.map("placements", SourceReader::placement));
  }

  private static Placement placement(String id, Sheet sheet) {
    return new Placement(
        id,
        sheet.text("title"),
        sheet.word("purpose", Purpose::ofId),
        sheet.object("radiator", SourceReader::radiator),
        sheet.object("level", SourceReader::level),
        sheet.optionalObject("spectrum", SourceReader::spectrum),
        sheet.object("directivity_db", SourceReader::directivity),
        sheet.number("wanted_from_hz"),
        sheet.optionalObject("companion", SourceReader::companion),
        sheet.object("distance_m", distance -> distance.number("least")),
        sheet.object("distance_m", distance -> distance.number("most")),
        sheet.has("side") ? sheet.word("side", SourceReader::side) : SourceSide.REFERENCE,
        sheet.has("air_jet") ? sheet.word("air_jet", AirJet::ofId) : AirJet.NONE,
        sheet.flag("overhead"),
        sheet.optionalText("custom"),
        sheet.text("basis"));
  }

  private static Radiator radiator(Sheet radiator) {
    double radiusM = radiator.number("radius_m");
    return radiator.word("type", type -> Radiator.ofId(type, radiusM));
  }

  private static SourceLevel level(Sheet level) {
    UncertainDb peak = level.object("peak_db_spl", SourceReader::percentiles);
    return new SourceLevel(
        level.number("at_m"), peak, new RmsSpl(level.number("long_term_db_spl")));
  }

  private static UncertainDb percentiles(Sheet figure) {
    return new UncertainDb(
        figure.number("typical"), (figure.number("high") - figure.number("low")) / 2);
  }

  private static Spectrum spectrum(Sheet spectrum) {
    double lowestHz = spectrum.number("lowest_hz");
    double highestHz = spectrum.number("highest_hz");
    return spectrum
        .octaves("octaves_db")
        .map(levelsDb -> Spectrum.ofLevels(levelsDb, lowestHz, highestHz))
        .orElseGet(
            () -> Spectrum.of(spectrum.word("class", SpectrumClass::ofId), lowestHz, highestHz));
  }

  private static Directivity directivity(Sheet index) {
    return new Directivity(
        index.number("125"), index.number("500"), index.number("2k"), index.number("8k"));
  }

  private static Companion companion(Sheet companion) {
    return new Companion(
        companion.word("purpose", Purpose::ofId), companion.number("wanted_from_hz"));
  }

  private static Optional<SourceSide> side(String word) {
    return Arrays.stream(SourceSide.values()).filter(side -> side.id().equals(word)).findFirst();
  }
}
