package org.standoff.rest.settings;

/** Questions that the description shows; a test sends each of them. */
final class HeadroomExamples {

  static final String QUERY =
      "peak_db_spl=140&microphone=core/ldc-card-1&preamp=core/preamp-16&gain_db=0";

  static final String QUERY_OF_A_SOURCE =
      "source=core/trumpet&distance_m=0.3&microphone=core/rib-8-1&preamp=core/preamp-16";

  static final String A_TOLD_PEAK =
      """
      {
        "peak_db_spl": 140, "spread_db": 3, "level_db_spl": 115,
        "microphone": "core/ldc-multi-1", "pattern": "cardioid", "pad_db": 8,
        "preamp": "core/preamp-16", "gain_db": 10
      }
      """;

  static final String A_SOURCE =
      """
      {
        "source": "core/snare", "placement": "top", "distance_m": 0.05,
        "microphone": "core/dyn-card-1", "preamp": "core/preamp-16"
      }
      """;

  private HeadroomExamples() {}
}
