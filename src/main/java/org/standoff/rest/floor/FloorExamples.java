package org.standoff.rest.floor;

/** Questions that the API description shows; a test sends each. */
final class FloorExamples {
  /** The demo's violin spot in the room with its loudest neighbours. */
  static final String VIOLIN_AND_DRUMS =
      """
      {
        "floor": {
          "ensemble": "boathouse/saltlight-twelve",
          "players": ["violin", "trumpet", "drums"],
          "microphones": [
            {
              "id": "violin",
              "microphone": "boathouse/sdc-card-1",
              "position_m": {"x": 8.4, "y": 4.2, "z": 2.0},
              "wanted": ["violin"]
            }
          ]
        },
        "remedies": {"barrier": "boathouse/gobo", "material_area_m2": 60}
      }
      """;

  /** The same as a sum by hand has it. */
  static final String BY_HAND =
      """
      {
        "floor": {
          "ensemble": "boathouse/saltlight-twelve",
          "players": ["violin", "trumpet", "drums"],
          "radiation": "omnidirectional-points",
          "microphones": [
            {
              "id": "violin",
              "pattern": "omni",
              "position_m": {"x": 8.4, "y": 4.2, "z": 2.0},
              "wanted": ["violin"]
            }
          ]
        },
        "order": 0,
        "octaves": true,
        "remedies": {"microphones": []}
      }
      """;

  /** Sources and a barrier told one by one. */
  static final String INLINE =
      """
      {
        "floor": {
          "room": "core/live-room",
          "sources": [
            {
              "id": "voice",
              "source": "core/voice-sung-close",
              "position_m": {"x": 2.0, "y": 2.0, "z": 1.6},
              "facing_azimuth_deg": -90
            },
            {
              "id": "kit",
              "source": "core/drum-kit",
              "position_m": {"x": 4.5, "y": 3.5, "z": 0.8},
              "facing_azimuth_deg": 120,
              "dynamic": "medium",
              "told_level": {"level_db_spl": 96, "at_m": 1, "measured": true}
            }
          ],
          "microphones": [
            {
              "id": "voice",
              "microphone": "core/dyn-sup-1",
              "position_m": {"x": 2.1, "y": 2.0, "z": 1.6},
              "azimuth_deg": 90,
              "wanted": ["voice"],
              "fader_db": -3
            },
            {
              "id": "overhead",
              "pattern": "cardioid",
              "other_patterns": ["omni", "figure-8"],
              "position_m": {"x": 4.5, "y": 3.5, "z": 1.9},
              "wanted": ["kit"]
            }
          ],
          "barriers": [
            {
              "barrier": "core/gobo-absorbing",
              "place": {"x_m": 3.2, "y_m": 2.7, "facing_azimuth_deg": -60}
            }
          ]
        },
        "order": 2
      }
      """;

  /** Overheads and a close microphone on one kit. */
  static final String ALIGNMENT =
      """
      {
        "floor": {
          "ensemble": "boathouse/saltlight-twelve",
          "players": ["drums"],
          "microphones": [
            {"id": "snare", "microphone": "boathouse/dyn-card-1", "wanted": ["drums"],
             "position_m": {"x": 2.75, "y": 4.85, "z": 1.0}},
            {"id": "overhead-left", "microphone": "boathouse/sdc-card-1", "wanted": ["drums"],
             "position_m": {"x": 2.5, "y": 5.2, "z": 1.9}},
            {"id": "overhead-right", "microphone": "boathouse/sdc-card-1", "wanted": ["drums"],
             "position_m": {"x": 2.6, "y": 3.7, "z": 1.9}}
          ]
        },
        "source": "drums",
        "pair": ["overhead-left", "overhead-right"],
        "equal_path_from_m": {"x": 2.6, "y": 4.8, "z": 0.9},
        "coldest_c": 12,
        "warmest_c": 21
      }
      """;

  /** Two spots, and a gobo that may go to either of two places. */
  static final String AIM =
      """
      {
        "floor": {
          "ensemble": "boathouse/saltlight-twelve",
          "players": ["violin", "cello", "trumpet", "drums"],
          "microphones": [
            {"id": "violin", "microphone": "boathouse/sdc-sup-1", "wanted": ["violin"],
             "position_m": {"x": 8.45, "y": 4.1, "z": 1.7}},
            {"id": "cello", "microphone": "boathouse/sdc-card-1", "wanted": ["cello"],
             "position_m": {"x": 9.8, "y": 3.2, "z": 0.8}}
          ]
        },
        "limits": {"elevation_from_deg": -80, "elevation_to_deg": 45, "wanted_loss_db": 1},
        "weights_db": {"drums": 3},
        "barrier": "boathouse/gobo",
        "barrier_places": [
          {"x_m": 10.4, "y_m": 4.6, "facing_azimuth_deg": -60},
          {"x_m": 6.0, "y_m": 4.2, "facing_azimuth_deg": 90}
        ]
      }
      """;

  /** A day of loud and soft pieces. */
  static final String EXPOSURE =
      """
      {
        "floor": {
          "ensemble": "boathouse/saltlight-twelve",
          "players": ["drums", "trumpet", "trombone", "alto", "violin"]
        },
        "seats": [
          {"id": "violinist", "position_m": {"x": 8.72, "y": 3.72, "z": 1.68}},
          {"id": "drummer", "position_m": {"x": 1.8, "y": 4.5, "z": 1.2}}
        ],
        "day": [
          {"title": "loud pieces", "hours": 2.5},
          {"title": "with brushes", "hours": 1.5, "louder_db": {"drums": -14}}
        ]
      }
      """;

  /** What sixty square metres of drape would buy. */
  static final String ROOM =
      """
      {"room": "boathouse/hall", "material": "core/drape-heavy", "material_area_m2": [60]}
      """;

  /** The same as a query. */
  static final String ROOM_QUERY =
      "room=boathouse/hall&material=core/drape-heavy&material_area_m2=60";

  private FloorExamples() {}
}
