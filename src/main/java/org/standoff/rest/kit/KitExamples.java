package org.standoff.rest.kit;

/** What the description shows of houses and units; a test sends each of them. */
final class KitExamples {

  static final String HOUSE = "quillmoor-store";
  static final String SERIAL = "QS-0104";
  static final String PACK = "quillmoor-store-own";

  static final String TERMS =
      """
      {
        "title": "Quillmoor Store", "zone": "Europe/Vienna", "currency": "EUR",
        "hours": [
          { "day": "monday", "opens": "08:00", "closes": "17:30" },
          { "day": "tuesday", "opens": "08:00", "closes": "17:30" },
          { "day": "wednesday", "opens": "08:00", "closes": "17:30" },
          { "day": "thursday", "opens": "08:00", "closes": "17:30" },
          { "day": "friday", "opens": "08:00", "closes": "17:30" },
          { "day": "saturday", "opens": "08:00", "closes": "17:30" }
        ],
        "turn_round_min": 240, "weekend_days": 1.5
      }
      """;

  static final String UNITS =
      """
      {
        "units": [
          { "serial": "QS-0101", "microphone": "boathouse/ldc-multi-1", "day_rate_minor": 1800 },
          { "serial": "QS-0102", "microphone": "boathouse/ldc-multi-1", "day_rate_minor": 1800,
            "state": "in-repair", "note": "pad switch sticks" },
          { "serial": "QS-0103", "microphone": "boathouse/sdc-omni-1", "day_rate_minor": 1200,
            "matched_group": "omni-1" },
          { "serial": "QS-0104", "microphone": "boathouse/sdc-omni-1", "day_rate_minor": 1200,
            "matched_group": "omni-1" }
        ]
      }
      """;

  static final String SHEET =
      """
      serial,microphone,matched_group,state,day_rate_minor,note,replacement_minor,match_within_db
      QS-0101,boathouse/ldc-multi-1,,available,1800,,,
      QS-0102,boathouse/ldc-multi-1,,in-repair,1800,"pad switch sticks, sent in",,
      QS-0103,boathouse/sdc-omni-1,omni-1,available,1200,,54000,0.5
      QS-0104,boathouse/sdc-omni-1,omni-1,available,1200,,54000,0.5
      """;

  static final String UNIT =
      """
      {
        "microphone": "boathouse/sdc-omni-1", "matched_group": "omni-1", "day_rate_minor": 1250,
        "note": "new capsule in May", "replacement_minor": 54000, "match_within_db": 0.5
      }
      """;

  static final String FILES =
      """
      {
        "files": {
          "pack.yaml":
            "format: 1\\nid: quillmoor-store-own\\ntitle: What Quillmoor Store measured itself\\nversion: 1.0.0\\nlicence: Apache-2.0\\npublisher: Quillmoor Store\\n",
          "barriers/screen-1.yaml":
            "format: 1\\ntitle: Folding screen, 1.5 x 1.6 m\\nwidth_m: 1.5\\nheight_m: 1.6\\nthickness_m: 0.08\\nmass_per_area_kg_per_m2: 10\\nabsorption: { \\"125\\": 0.12, \\"250\\": 0.35, \\"500\\": 0.7, \\"1k\\": 0.85, \\"2k\\": 0.9, \\"4k\\": 0.9 }\\nmass_kg: 26\\nbasis: assumed\\n"
        }
      }
      """;

  private KitExamples() {}
}
