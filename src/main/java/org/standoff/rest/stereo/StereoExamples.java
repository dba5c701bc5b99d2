package org.standoff.rest.stereo;

/** Questions that the API description shows; a test sends each. */
final class StereoExamples {
  static final String QUERY =
      "pair=core/near-coincident-17-110&azimuth_deg=30&azimuth_deg=-30&distance_m=2.5";

  /** The layout that broadcasters took up, two sources at 2.5 m. */
  static final String NEAR_COINCIDENT =
      """
      {
        "pair": "core/near-coincident-17-110",
        "azimuth_deg": [30, -30],
        "distance_m": 2.5
      }
      """;

  /** Three horns of an ensemble before a pair on a bar of 0.4 m. */
  static final String HORN_LINE =
      """
      {
        "pair": "core/spaced-directional",
        "spacing_m": 0.4,
        "angle_deg": 120,
        "microphone": "boathouse/ldc-multi-1",
        "place": {"position_m": {"x": 9.1, "y": 6.7, "z": 2.0}, "facing_azimuth_deg": -90},
        "ensemble": "boathouse/saltlight-twelve",
        "players": ["trumpet", "alto", "trombone"],
        "models": ["core/two-region", "core/straight-trade"]
      }
      """;

  /** Crossed figure-8s before the same horns, with the drums behind. */
  static final String CROSSED_FIGURE_8S =
      """
      {
        "pair": "core/crossed-figure-8s",
        "place": {"position_m": {"x": 9.1, "y": 6.7, "z": 2.0}, "facing_azimuth_deg": -90},
        "ensemble": "boathouse/saltlight-twelve",
        "players": ["trumpet", "alto", "trombone", "drums"]
      }
      """;

  /** Capsules that stand in no catalogue. */
  static final String CAPSULES =
      """
      {
        "capsules": [
          {"channel": "left", "position_m": {"x": -0.1, "y": 0, "z": 0}, "azimuth_deg": 50, "pattern": "cardioid"},
          {"channel": "right", "position_m": {"x": 0.1, "y": 0, "z": 0}, "azimuth_deg": -50, "omni_part": 0.45}
        ],
        "sources": [
          {"id": "violin", "azimuth_deg": 35, "distance_m": 2},
          {"id": "cello", "azimuth_deg": -35, "distance_m": 2.2},
          {"id": "hall", "azimuth_deg": 150}
        ],
        "temperature_c": 21
      }
      """;

  /** The horns again, with the long bar: which pair fills 97 %? */
  static final String LONG_BAR =
      """
      {
        "ensemble": "boathouse/saltlight-twelve",
        "player_ids": ["trumpet", "alto", "trombone"],
        "stand": {"position_m": {"x": 9.1, "y": 6.7, "z": 2.0}},
        "bar_most_m": 0.6,
        "microphones": [{"microphone": "boathouse/ldc-multi-1", "count": 3, "matched": true}],
        "wish": {"fill_pct": 97},
        "models": ["core/straight-trade", "core/two-region"],
        "limit": 3
      }
      """;

  /** From what one house has free. */
  static final String FROM_FREE_KIT =
      """
      {
        "ensemble": "boathouse/saltlight-twelve",
        "player_ids": ["trumpet", "alto", "trombone"],
        "stand": {"position_m": {"x": 9.1, "y": 6.7, "z": 2.0}},
        "bar_most_m": 0.6,
        "pack": "boathouse",
        "available": {
          "from": "2027-06-11T10:00:00+02:00", "to": "2027-06-14T11:00:00+02:00",
          "houses": ["ostrel-hire"]
        },
        "wish": {"fill_pct": 97},
        "models": ["core/straight-trade", "core/two-region"],
        "limit": 3
      }
      """;

  /** And with the short one: what is out of reach, and by how much? */
  static final String SHORT_BAR =
      """
      {
        "ensemble": "boathouse/saltlight-twelve",
        "player_ids": ["trumpet", "alto", "trombone"],
        "stand": {"position_m": {"x": 9.1, "y": 6.7, "z": 2.0}},
        "bar_most_m": 0.2,
        "patterns": ["cardioid", "figure-8"],
        "techniques": ["coincident", "near-coincident"],
        "wish": {"fill_pct": 97},
        "models": ["core/straight-trade", "core/two-region"]
      }
      """;

  /** A line of players that is told by its width alone. */
  static final String LINE_OF_PLAYERS =
      """
      {
        "width_m": 4,
        "player_count": 5,
        "stand": {"distance_m": {"least": 2, "usual": 3, "most": 5}, "height_m": 2.2},
        "room": "core/hall",
        "wish": {
          "fill_pct": 80,
          "mono_loss_at_most_db": 6,
          "direct_to_reverberant_db": {"least": -6, "most": 6}
        }
      }
      """;

  private StereoExamples() {}
}
