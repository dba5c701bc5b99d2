package org.standoff.kit.house;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.OwnDatabase;
import org.standoff.kit.PlainTransactions;

class HousesInOrderTest {

  @Test
  void housesAreInTheOrderInWhichPagesAreCutWhateverTheServerSpeaks() {
    try (OwnDatabase database = OwnDatabase.inOrderOfADictionary()) {
      List<String> ids = List.of("a", "a-c", "a-d", "a1", "ab", "ab-a", "aba");
      assertThat(
              database.rows(
                  "select id from unnest(?) as u (id) order by id",
                  row -> row.getString("id"),
                  (Object) ids.toArray(String[]::new)))
          .as("the server orders otherwise")
          .isNotEqualTo(ids);
      ids.forEach(
          id ->
              database.change(
                  "insert into house (id, title, zone) values (?, 'Any', 'Europe/Vienna')", id));
      Houses houses = new Houses(new PlainTransactions(database.pool(1)), List.of());
      assertThat(houses.list()).extracting(HouseTerms::id).isEqualTo(ids);
      assertThat(houses.named(ids)).extracting(HouseTerms::id).isEqualTo(ids);
    }
  }
}
