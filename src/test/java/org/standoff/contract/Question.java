package org.standoff.contract;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Map;
import org.standoff.fixture.Ask;
import org.standoff.fixture.Sheets;
import org.standoff.fixture.StandingFloor;

/** Questions that use everything that can be asked, items inline, to be spoilt one by one. */
enum Question {
  EVERYTHING_ABOUT_SETTINGS(
      Ask.settings()
          .item("source", Sheets.POINT)
          .with("placement", "spot")
          .with("dynamic", "loud")
          .with("level_offset_db", 1)
          .with(
              "told_level",
              Map.of("peak_db_spl", 130, "at_m", 0.5, "spread_db", 3, "measured", true))
          .with("distance_m", 0.3)
          .with("distance_spread_m", 0.01)
          .with("angle_deg", 10)
          .with("aim_off_deg", 20)
          .with("second_microphone", Map.of("distance_m", 0.4, "angle_deg", 0, "aim_off_deg", 30))
          .with("companions", List.of())
          .with("doubles", List.of(Map.of("source", "core/flute", "distance_m", 0.4)))
          .with("microphones", List.of(Sheets.of(Sheets.MULTI_PATTERN), "core/dyn-card-1"))
          .item("preamp", Sheets.PREAMP)
          .with("in_line_pads_db", List.of(10, 20))
          .with("phantom", "free")
          .item("room", Sheets.HALL)
          .with(
              "neighbours",
              List.of(
                  Map.of(
                      "source",
                      "core/hi-hat",
                      "distance_m",
                      0.5,
                      "angle_deg",
                      120,
                      "source_angle_deg",
                      60,
                      "dynamic",
                      "soft",
                      "level_offset_db",
                      -3)))
          .with("neighbour_level_db_spl", 80)
          .with("background_noise_dba", 25)
          .with("temperature_c", 20)
          .with("relative_humidity_percent", 50)
          .item("style", Sheets.STYLE)
          .with("target_peak_dbfs", -12)
          .with("wanted_headroom_db", 5)
          .with("guarded_percentile", 97)
          .with(
              "stand",
              Map.of(
                  "boom_m", 1.5,
                  "boom_kg", 0.8,
                  "stand_kg", 4,
                  "foot_edge_m", 0.35,
                  "counter_arm_m", 0.6))
          .with("limit", 3)),

  SETTINGS_SIDE_BY_SIDE(
      Ask.settings()
          .with("source", "core/grand-piano")
          .with("placement", "hammers")
          .with("companions", List.of("under"))
          .item("microphone", Sheets.MULTI_PATTERN)
          .item("preamp", Sheets.PREAMP)
          .with(
              "settings",
              List.of(
                  Map.of(
                      "output", "main",
                      "pattern", "omni",
                      "pad_db", 10,
                      "high_pass_hz", 40,
                      "in_line_pad_db", 10,
                      "preamp_pad_db", 0,
                      "gain_db", 10)))),

  A_CHAIN_AT_A_TOLD_PEAK(
      Ask.headroom()
          .with("peak_db_spl", 140)
          .with("spread_db", 3)
          .with("level_db_spl", 110)
          .item("microphone", Sheets.MULTI_PATTERN)
          .item("preamp", Sheets.PREAMP)
          .with("output", "main")
          .with("pattern", "cardioid")
          .with("pad_db", 10)
          .with("high_pass_hz", 40)
          .with("in_line_pad_db", 3)
          .with("preamp_pad_db", 0)
          .with("gain_db", 10)
          .item("style", Sheets.STYLE)
          .with("background_noise_dba", 20)),

  A_CHAIN_AT_A_SOURCE(
      Ask.headroom()
          .item("source", Sheets.POINT)
          .with("placement", "spot")
          .with("dynamic", "medium")
          .with("level_offset_db", 0)
          .with("distance_m", 0.1)
          .with("angle_deg", 30)
          .item("microphone", Sheets.RIBBON)
          .item("preamp", Sheets.PREAMP)
          .with("target_peak_dbfs", -10)
          .with("wanted_headroom_db", 4)
          .with("guarded_percentile", 95)),

  A_PAIR_AND_PLAYERS(
      Ask.at("/v1/stereo/geometry")
          .with("pair", "core/spaced-directional")
          .with("spacing_m", 0.4)
          .with("angle_deg", 120)
          .item("microphone", Sheets.MULTI_PATTERN)
          .with(
              "place",
              Map.of("position_m", Map.of("x", 9.1, "y", 6.7, "z", 2), "facing_azimuth_deg", -90))
          .with("ensemble", "boathouse/saltlight-twelve")
          .with("players", List.of("trumpet", "alto"))
          .with("models", List.of("core/two-region"))
          .with("temperature_c", 20)),

  BARE_CAPSULES_AND_SOURCES(
      Ask.at("/v1/stereo/geometry")
          .with("capsules", List.of(capsule("left", -0.1, 50), capsule("right", 0.1, -50)))
          .with(
              "sources",
              List.of(
                  Map.of("id", "violin", "azimuth_deg", 35, "distance_m", 2),
                  Map.of("id", "hall", "azimuth_deg", 150)))),

  A_FLOOR_AND_ITS_BLEED(
      Ask.floor("bleed")
          .with("floor", floor().node())
          .with("order", 1)
          .with("octaves", true)
          .with(
              "remedies",
              Map.of(
                  "microphones",
                  List.of("spot"),
                  "barrier",
                  "core/gobo-hard",
                  "material",
                  "core/drape-heavy",
                  "material_area_m2",
                  20,
                  "closer_share",
                  0.6,
                  "softer_db",
                  3))),

  ARRIVALS_OF_A_SOURCE(
      Ask.floor("alignment")
          .with("floor", floor().node())
          .with("source", "point")
          .with("microphones", List.of("spot", "body"))
          .with("pair", List.of("spot", "body"))
          .with("equal_path_from_m", StandingFloor.place(3, 3, 1))
          .with("sample_rate_hz", 44100)
          .with("extra_ms", 5)
          .with("coldest_c", 10)
          .with("warmest_c", 22)),

  AIMS_WITHIN_LIMITS(
      Ask.floor("aim")
          .with("floor", floor().node())
          .with("order", 0)
          .with("microphones", List.of("spot"))
          .with("limits", Map.of("elevation_from_deg", -40, "elevation_to_deg", 40))
          .with(
              "limits_of",
              Map.of(
                  "spot",
                  Map.of(
                      "azimuth_from_deg", 0,
                      "azimuth_to_deg", 180,
                      "switch_pattern", true,
                      "wanted_loss_db", 1)))
          .with("weights_db", Map.of("drums", 3))
          .with("barrier", "core/baffle-low")
          .with("barrier_places", List.of(Map.of("x_m", 4, "y_m", 4, "facing_azimuth_deg", 10)))),

  A_DAY_ON_A_FLOOR(
      Ask.floor("exposure")
          .with("floor", floor().node())
          .with("order", 0)
          .with("seats", List.of(Map.of("id", "a", "position_m", StandingFloor.place(3, 6, 1.2))))
          .with(
              "day",
              List.of(
                  Map.of(
                      "title",
                      "loud",
                      "hours",
                      2,
                      "sounding",
                      List.of("drums", "point"),
                      "louder_db",
                      Map.of("drums", -6))))),

  A_ROOM_AND_MATERIAL(
      Ask.floor("room")
          .item("room", Sheets.HALL)
          .with("material", "core/drape-heavy")
          .with("material_area_m2", List.of(10, 20))
          .with("temperature_c", 18)
          .with("relative_humidity_percent", 40)),

  SETTINGS_FROM_FREE_KIT(
      Ask.settings()
          .with("source", "core/violin")
          .with("placement", "spot")
          .with("distance_m", 0.5)
          .with("pack", "boathouse")
          .with("preamp", "boathouse/recorder")
          .with(
              "available",
              Map.of(
                  "from", "2027-06-11T10:00:00+02:00",
                  "to", "2027-06-14T11:00:00+02:00",
                  "houses", List.of("ostrel-hire", "vennick-loan-store")))),

  KIT_OF_TWO_HOUSES(
      Ask.at("/v1/availability")
          .with("from", "2027-06-11T10:00:00+02:00")
          .with("to", "2027-06-14T11:00:00+02:00")
          .with("houses", List.of("ostrel-hire", "vennick-loan-store"))
          .with(
              "lines",
              List.of(
                  Map.of("microphone", "boathouse/sdc-omni-1", "quantity", 2, "matched", true),
                  Map.of("microphone", "boathouse/clip-sup-1", "quantity", 30),
                  Map.of("microphone", "boathouse/rib-8-1")))
          .with("substitute_count", 4));

  private final Ask ask;

  Question(Ask ask) {
    this.ask = ask;
  }

  private static Map<String, Object> capsule(String channel, double xM, double azimuthDeg) {
    return Map.of(
        "channel",
        channel,
        "position_m",
        Map.of("x", xM, "y", 0, "z", 0),
        "azimuth_deg",
        azimuthDeg,
        "pattern",
        "cardioid");
  }

  String path() {
    return ask.path();
  }

  ObjectNode body() {
    return ask.body();
  }

  Ask ask() {
    return ask;
  }

  private static StandingFloor floor() {
    return StandingFloor.demo(Sheets.of(Sheets.HALL), "drums", "violin")
        .with(
            "playing",
            List.of(
                Map.of(
                    "player", "drums",
                    "source", "core/drum-kit",
                    "placement", "overhead",
                    "variant", "brushes",
                    "dynamic", "loud",
                    "level_offset_db", 1,
                    "told_level", Map.of("level_db_spl", 95),
                    "position_m", StandingFloor.place(2, 4, 0.8),
                    "facing_azimuth_deg", -80)))
        .point("point", StandingFloor.place(6, 6, 1))
        .microphone(
            Map.of(
                "id",
                "spot",
                "pattern",
                "cardioid",
                "other_patterns",
                List.of("omni"),
                "position_m",
                StandingFloor.place(6, 6.5, 1.2),
                "aim_at",
                "point",
                "fader_db",
                -3,
                "wanted",
                List.of("point"),
                "side",
                "opposite"))
        .microphone(
            Map.of(
                "id",
                "body",
                "microphone",
                Sheets.of(Sheets.MULTI_PATTERN),
                "output",
                "main",
                "pattern",
                "omni",
                "position_m",
                StandingFloor.place(6, 7, 1.5),
                "azimuth_deg",
                20,
                "elevation_deg",
                -10))
        .barrier("core/gobo-absorbing", 4, 5, 30)
        .with("radiation", "as-described")
        .with("temperature_c", 20)
        .with("relative_humidity_percent", 50);
  }
}
