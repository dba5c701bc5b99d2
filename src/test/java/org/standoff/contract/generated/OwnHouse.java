package org.standoff.contract.generated;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import org.standoff.fixture.Kit;
import org.standoff.fixture.Tokens;

/** A house of this test's own, so that nothing of another test's is touched, and a second one. */
final class OwnHouse implements Credentials {
  private final String house;
  private final String serial;
  private final String other;
  private final String good = Tokens.admin();
  private final String expired =
      Tokens.mint()
          .token(
              "admin",
              "admin",
              Optional.empty(),
              Instant.now().minus(Duration.ofHours(3)),
              Duration.ofHours(1));
  private final String foreign;

  private OwnHouse(String house, String serial, String other) {
    this.house = house;
    this.serial = serial;
    this.other = other;
    this.foreign = Tokens.publisher(other);
  }

  static OwnHouse stand() {
    Kit kit = Kit.house();
    String serial = kit.matchedPair("boathouse/sdc-omni-1").get(0);
    kit.units("boathouse/ldc-multi-1", 2);
    kit.units("boathouse/rib-8-1", 2);
    return new OwnHouse(kit.id(), serial, Kit.house().id());
  }

  @Override
  public Optional<String> good(Api.Operation operation) {
    return Optional.of(good);
  }

  @Override
  public Optional<String> expired(Api.Operation operation) {
    return Optional.of(expired);
  }

  @Override
  public Optional<String> foreign(Api.Operation operation) {
    return Optional.of(foreign);
  }

  @Override
  public Map<String, String> names() {
    return Map.of("quillmoor-store", house, "ostrel-hire", house, "vennick-loan-store", other);
  }

  @Override
  public Optional<String> pathValue(Api.Operation operation, String parameter) {
    if (!operation.path().contains("{house}")) {
      return Optional.empty();
    }
    return switch (parameter) {
      case "house" -> Optional.of(house);
      case "serial" -> Optional.of(serial);
      case "pack" -> Optional.of(house + "-own");
      default -> Optional.empty();
    };
  }
}
