package org.standoff.shipped;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.standoff.acoustics.Reverberation;

/** Laws over the shipped rooms, and the boathouse against its description. */
class RoomsTest {
  private static final List<ShippedFile> ALL = ShippedCatalogue.ofKind("room");
  private static final List<String> OCTAVES = List.of("125", "250", "500", "1k", "2k", "4k");

  @Test
  void surfacesCoverTheBox() {
    assertThat(ALL.stream().filter(room -> !room.at("/equivalent_box").booleanValue()))
        .as("the areas of the surfaces add up to the walls, floor and ceiling within 1 %")
        .isNotEmpty()
        .allMatch(room -> Math.abs(areaM2(room) / boxSurfaceM2(room) - 1) < 0.01);
  }

  @Test
  void aStatedSurfaceIsTheSumOfItsParts() {
    assertThat(ALL.stream().filter(room -> room.content().has("surface_m2")))
        .as("surface_m2 is the sum of area_m2")
        .isNotEmpty()
        .allMatch(room -> Math.abs(areaM2(room) - room.number("/surface_m2")) < 0.5);
  }

  @Test
  void aBoxHasTheVolumeOfItsRoom() {
    assertThat(ALL.stream().filter(room -> room.content().has("volume_m3")))
        .as("the box of a room that is no box has its volume, within 1 %")
        .isNotEmpty()
        .allMatch(room -> Math.abs(boxVolumeM3(room) / room.number("/volume_m3") - 1) < 0.01);
  }

  @Test
  void noRoomRingsLongerThanACathedralOrShorterThanAClosetOfWool() {
    assertThat(ALL)
        .as("absorption gives a decay outside 0.1 to 10 s: correct the surfaces")
        .allMatch(room -> OCTAVES.stream().allMatch(at -> between(decayS(room, at), 0.1, 10)));
  }

  @ParameterizedTest(name = "{0} Hz: {1} s")
  @CsvSource({"125, 1.5", "250, 1.6", "500, 1.5", "1k, 1.5", "2k, 1.3", "4k, 1.15"})
  void theBoathouseDecaysAsDescribed(String octave, double decayS) {
    ShippedFile hall = ShippedCatalogue.find("room", "boathouse/hall");
    assertThat(decayS(hall, octave)).isCloseTo(decayS, within(0.05));
  }

  private static boolean between(double value, double least, double most) {
    return value >= least && value <= most;
  }

  private static double decayS(ShippedFile room, String octave) {
    double area = room.at("/absorption_area_m2/" + octave).asDouble();
    for (JsonNode surface : room.each("/surfaces")) {
      area +=
          surface.get("area_m2").doubleValue() * surface.at("/absorption/" + octave).doubleValue();
    }
    double volume = room.content().has("volume_m3") ? room.number("/volume_m3") : boxVolumeM3(room);
    return Reverberation.sabineS(volume, area);
  }

  private static double areaM2(ShippedFile room) {
    return room.each("/surfaces").stream()
        .mapToDouble(surface -> surface.get("area_m2").doubleValue())
        .sum();
  }

  private static double boxVolumeM3(ShippedFile room) {
    return room.number("/box/length_m")
        * room.number("/box/width_m")
        * room.number("/box/height_m");
  }

  private static double boxSurfaceM2(ShippedFile room) {
    double length = room.number("/box/length_m");
    double width = room.number("/box/width_m");
    double height = room.number("/box/height_m");
    return 2 * (length * width + length * height + width * height);
  }
}
