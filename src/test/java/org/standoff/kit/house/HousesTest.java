package org.standoff.kit.house;

import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.math.BigDecimal;
import java.time.Duration;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Kit;

@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class HousesTest {
  @Inject Houses houses;

  @Test
  void theTermsOfAHouseAreThoseOfItsRow() {
    String id =
        Kit.house().hours("tue 09:00-16:00").turnRoundMin(240).dropBox().weekendDays("1.5").id();
    HouseTerms terms = houses.find(id).orElseThrow();
    assertThat(terms.hours()).hasToString("tue 09:00-16:00");
    assertThat(terms.turnRound()).isEqualTo(Duration.ofHours(4));
    assertThat(terms.dropBox()).isTrue();
    assertThat(terms.weekendDays()).isEqualTo(new BigDecimal("1.5"));
    assertThat(terms.currency()).hasToString("EUR");
    assertThat(houses.list()).contains(terms);
  }

  @Test
  void anUnknownHouseIsNoHouse() {
    assertThat(houses.find("nobody")).isEmpty();
  }
}
