package org.standoff.rest.http;

import static org.assertj.core.api.Assertions.assertThat;

import io.vertx.core.net.SocketAddress;
import java.time.Duration;
import java.time.InstantSource;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CallerNetworkTest {

  @ParameterizedTest
  @CsvSource({
    "2001:db8:7:1::5, 2001:db8:7:1:ffff:ffff:ffff:ffff",
    "2001:db8:7:1::5, 2001:0DB8:0007:0001::6",
    "fe80::1, fe80::2%eth0",
    "192.0.2.7, ::ffff:192.0.2.7",
    "192.0.2.7, ::ffff:c000:207"
  })
  void oneNetworkIsOneCaller(String one, String other) {
    assertThat(network(one)).isEqualTo(network(other));
  }

  @ParameterizedTest
  @CsvSource({
    "2001:db8:7:1::5, 2001:db8:7:2::5",
    "192.0.2.7, 192.0.2.8",
    "::ffff:192.0.2.7, ::ffff:192.0.2.8",
    "192.0.2.7, c000:207::",
    "unknown, _hidden"
  })
  void twoNetworksAreTwoCallers(String one, String other) {
    assertThat(network(one)).isNotEqualTo(network(other));
  }

  @Test
  void aCallerWithANetworkOfItsOwnCannotUseUpThePlaces() {
    RateLimit limit =
        new RateLimit(OptionalInt.of(3), Duration.ofSeconds(60), InstantSource.system());
    for (int i = 0; i < RateLimit.MOST_CALLERS; i++) {
      limit.count(network("2001:db8:7:1::" + Integer.toHexString(i)));
    }
    assertThat(limit.count(network("192.0.2.7")).orElseThrow().left()).isEqualTo(2);
    assertThat(limit.count(network("192.0.2.8")).orElseThrow().left()).isEqualTo(2);
  }

  private static String network(String address) {
    return CallerNetwork.of(SocketAddress.inetSocketAddress(4711, address));
  }
}
