package org.standoff.kit.hold;

import static io.restassured.RestAssured.given;
import static org.assertj.core.api.Assertions.assertThat;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.time.Duration;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.EmbeddedDatabaseResource;
import org.standoff.fixture.Kit;

@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class HoldGaugesTest {
  private static final Pattern RETURNED =
      Pattern.compile("standoff_holds\\{state=\"returned\"} ([0-9.]+)");

  @Inject HoldGauges gauges;

  @Test
  void aHoldMoreOfAStateIsOneMore() {
    Kit.house().id();
    gauges.look();
    double before = returned();
    Kit.sql(
        "insert into hold (id, desk, reference, held_from, held_to, state, lifetime_min)"
            + " values (?, 'gauges', ?, '2027-01-01Z', '2027-01-02Z', 'returned', 60)",
        UUID.randomUUID(),
        UUID.randomUUID().toString());
    gauges.look();
    assertThat(returned()).isEqualTo(before + 1);
  }

  @Test
  void countingRestsTenSecondsAndNeverTakesMoreThanAHundredthOfTheTime() {
    assertThat(HoldGauges.restAfter(Duration.ofMillis(3))).isEqualTo(Duration.ofSeconds(10));
    assertThat(HoldGauges.restAfter(Duration.ofMillis(100))).isEqualTo(Duration.ofSeconds(10));
    assertThat(HoldGauges.restAfter(Duration.ofMillis(900))).isEqualTo(Duration.ofSeconds(90));
  }

  private static double returned() {
    Matcher line = RETURNED.matcher(given().get("/q/metrics").asString());
    assertThat(line.find()).isTrue();
    return Double.parseDouble(line.group(1));
  }
}
