package org.standoff.rest.settings;

/** Questions that the description shows; a test sends each of them. */
final class SettingsExamples {

  static final String QUERY =
      "source=core/snare&placement=top&distance_m=0.05&microphone=core/ldc-multi-1"
          + "&preamp=core/preamp-16";

  static final String QUERY_OF_A_TOLD_LEVEL =
      "source=core/kick&placement=inside&told_level.peak_db_spl=146&told_level.spread_db=4"
          + "&pack=boathouse&preamp=boathouse/recorder&in_line_pads_db=10&in_line_pads_db=20"
          + "&limit=3";

  static final String ONE_MICROPHONE =
      """
      {
        "source": "core/snare", "placement": "top", "distance_m": 0.05,
        "microphone": "core/ldc-multi-1", "preamp": "core/preamp-16"
      }
      """;

  static final String A_TOLD_LEVEL =
      """
      {
        "source": "core/kick", "placement": "inside", "distance_m": 0.1,
        "told_level": { "peak_db_spl": 146, "spread_db": 4 },
        "pack": "boathouse", "preamp": "boathouse/recorder",
        "in_line_pads_db": [10, 20], "limit": 3
      }
      """;

  static final String FROM_FREE_KIT =
      """
      {
        "source": "core/violin", "placement": "spot", "distance_m": 0.5,
        "pack": "boathouse", "preamp": "boathouse/recorder", "limit": 3,
        "available": {
          "from": "2027-06-11T10:00:00+02:00", "to": "2027-06-14T11:00:00+02:00",
          "houses": ["ostrel-hire", "vennick-loan-store"]
        }
      }
      """;

  static final String WITH_NEIGHBOURS =
      """
      {
        "source": "core/violin", "placement": "spot", "distance_m": 0.5,
        "microphones": ["core/sdc-card-1", "core/sdc-hyper-1", "core/rib-8-1"],
        "preamp": "core/preamp-16", "phantom": "on", "room": "boathouse/hall",
        "neighbours": [
          { "source": "core/trumpet", "distance_m": 4, "angle_deg": 110, "source_angle_deg": 45 },
          { "source": "core/drum-kit", "placement": "overhead", "distance_m": 6, "angle_deg": 150,
            "level_offset_db": -7 }
        ]
      }
      """;

  static final String DOUBLES =
      """
      {
        "source": "core/saxophone", "distance_m": 0.4,
        "doubles": [ { "source": "core/flute" } ],
        "microphone": "boathouse/ldc-multi-1", "preamp": "boathouse/recorder"
      }
      """;

  static final String A_PAIR =
      """
      {
        "source": "core/grand-piano", "placement": "hammers", "companions": ["under"],
        "distance_m": 0.3, "second_microphone": { "distance_m": 0.35 },
        "microphone": "core/sdc-card-1", "preamp": "core/preamp-16"
      }
      """;

  static final String SIDE_BY_SIDE =
      """
      {
        "source": "core/guitar-amp", "distance_m": 0.05,
        "microphone": "core/ldc-multi-1", "preamp": "core/preamp-16",
        "settings": [
          { "pattern": "cardioid", "pad_db": 8 },
          { "pattern": "figure-8", "pad_db": 16, "gain_db": 20 }
        ]
      }
      """;

  static final String OWN_MICROPHONE =
      """
      {
        "source": "core/trumpet", "distance_m": 0.4, "preamp": "core/preamp-16",
        "microphone": {
          "format": 1, "title": "A microphone of our own", "transducer": "condenser",
          "address": "end", "powering": { "need": "p48", "current_ma": 3 },
          "source_impedance_ohm": 100, "maximum_spl": { "level_db_spl": 134, "thd_percent": 0.5 },
          "outputs": [ { "id": "main", "patterns": [
            { "pattern": "cardioid", "sensitivity_mv_per_pa": 12, "self_noise_dba": 15 } ] } ],
          "basis": "measured"
        }
      }
      """;

  private SettingsExamples() {}
}
