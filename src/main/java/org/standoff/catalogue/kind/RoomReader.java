package org.standoff.catalogue.kind;

import java.util.List;
import java.util.OptionalDouble;
import org.standoff.acoustics.Air;
import org.standoff.acoustics.Box;
import org.standoff.acoustics.Octave;
import org.standoff.acoustics.Octaves;
import org.standoff.acoustics.Reverberation;
import org.standoff.acoustics.Room;
import org.standoff.catalogue.Sheet;

/** Makes a room of its sheet: a measured decay counts for more than what surfaces add up to. */
public final class RoomReader {

  private record Surface(double areaM2, Octaves absorption) {}

  private RoomReader() {}

  /**
   * @param sheet that has passed the schema of rooms
   */
  public static Room read(Sheet sheet) {
    Box box = sheet.object("box", RoomReader::box);
    List<Surface> surfaces = sheet.list("surfaces", RoomReader::surface);
    double volumeM3 = sheet.optionalNumber("volume_m3").orElse(box.volumeM3());
    double surfaceM2 =
        sheet
            .optionalNumber("surface_m2")
            .orElse(
                surfaces.isEmpty()
                    ? box.surfaceM2()
                    : surfaces.stream().mapToDouble(Surface::areaM2).sum());
    Octaves areaM2 =
        sheet
            .octaves("decay_s")
            .map(decay -> decay.map(s -> Reverberation.areaOfDecayM2(volumeM3, s)))
            .orElseGet(() -> sum(surfaces, sheet));
    return new Room(
        volumeM3,
        surfaceM2,
        areaM2,
        box,
        sheet.object("air", RoomReader::air),
        sheet.number("background_noise_dba"));
  }

  private static Octaves sum(List<Surface> surfaces, Sheet sheet) {
    double[] areaM2 = new double[Octave.COUNT];
    Octaves more = sheet.octaves("absorption_area_m2").orElse(Octaves.filled(0));
    for (Octave octave : Octave.all()) {
      areaM2[octave.ordinal()] = more.get(octave);
      for (Surface surface : surfaces) {
        areaM2[octave.ordinal()] += surface.areaM2() * surface.absorption().get(octave);
      }
    }
    return Octaves.of(areaM2);
  }

  private static Surface surface(Sheet surface) {
    return new Surface(surface.number("area_m2"), surface.octaves("absorption").orElseThrow());
  }

  private static Box box(Sheet box) {
    return new Box(box.number("length_m"), box.number("width_m"), box.number("height_m"));
  }

  private static Air air(Sheet air) {
    double temperatureC = air.number("temperature_c");
    OptionalDouble humidity = air.optionalNumber("relative_humidity_percent");
    return humidity.isPresent()
        ? Air.at(temperatureC, humidity.getAsDouble())
        : Air.at(temperatureC);
  }
}
