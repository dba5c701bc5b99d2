package org.standoff.shipped;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** The shipped default style is the one that answers promise when nobody names another. */
class StylesTest {

  @Test
  void theHouseDefaultIsTheDocumentedOne() {
    assertThat(ShippedCatalogue.find("style", "core/house-default").content())
        .isEqualTo(
            ShippedCatalogue.yaml(
                """
                format: 1
                title: House default
                guarded_percentile: 95
                wanted_headroom_db: 4
                target_peak_dbfs: -10
                allowed_filter_loss_db: 1.0
                noise_distance_db: 60
                isolation_weight: { attack: 1, body: 1, weight: 1, whole: 1, room: -1 }
                evenness_weight: 0.2
                surrounding: { room: core/studio-medium, neighbour_level_db_spl: 85 }
                """));
  }

  @Test
  void theRoomIsNeverWorthIsolatingWhereItIsWanted() {
    assertThat(ShippedCatalogue.ofKind("style"))
        .as("isolation_weight.room is at most 0")
        .isNotEmpty()
        .allMatch(style -> style.number("/isolation_weight/room") <= 0);
  }
}
