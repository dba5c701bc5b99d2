package org.standoff.contract.generated;

import java.time.Duration;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import org.standoff.fixture.Kit;
import org.standoff.fixture.Tokens;

/**
 * Houses of this test's own, so that nothing of another test's is touched: one whose kit is told,
 * one whose kit is held, and one of strangers. What a step with a hold, or a DELETE, would use up
 * is made anew for each call that may do it.
 */
final class OwnHouse implements Credentials {
  /** Names in the examples. */
  private static final String TOLD = "quillmoor-store";

  private static final String TOLD_UNIT = "QS-0104";
  private static final String TOLD_PACK = TOLD + "-own";
  private static final String HELD = "ostrel-hire";
  private static final String LENDS_TOO = "vennick-loan-store";
  private static final String REFERENCE = "saltlight-2027-06";
  private static final String TENTATIVE = "01978d1e-6f00-7a11-8c01-5f0c3b9d2a01";
  private static final String CONFIRMED = "01978d1e-6f00-7a11-8c02-5f0c3b9d2a02";
  private static final String OUT = "01978d1e-6f00-7a11-8c03-5f0c3b9d2a03";
  private static final String DIARY_UNIT = "sdc-omni-1-1";
  private static final String UNIT_THAT_IS_OUT = "clip-sup-1-3";

  private static final String PACK =
      "{\"pack.yaml\": \"format: 1\\nid: %s\\ntitle: Its own\\nversion: 1.0.0\\n"
          + "licence: Apache-2.0\\npublisher: A house\\n\"}";

  private final String told = Kit.house().id();
  private final HeldKit held = new HeldKit();
  private final String strangers = Kit.house().id();
  private final String reference = "g-" + told;
  private final Map<String, String> names;
  private final AtomicInteger count = new AtomicInteger();
  private final String good = Tokens.admin();
  private final String foreign = Tokens.publisher(strangers);
  private final String expired =
      Tokens.mint()
          .token(
              "admin",
              "admin",
              Optional.empty(),
              Instant.now().minus(Duration.ofHours(3)),
              Duration.ofHours(1));

  private OwnHouse() {
    HeldKit.unit(told, TOLD_UNIT, "boathouse/sdc-omni-1");
    held.unit(DIARY_UNIT, "boathouse/sdc-omni-1");
    held.unit(UNIT_THAT_IS_OUT, "boathouse/clip-sup-1");
    held.wanted();
    names =
        Map.of(
            TOLD, told,
            HELD, held.house(),
            LENDS_TOO, held.house(),
            REFERENCE, reference,
            TENTATIVE, held.hold("tentative", held.unit("T", "boathouse/sdc-card-1")),
            CONFIRMED, held.hold("confirmed", held.unit("C", "boathouse/sdc-card-1")),
            OUT, held.hold("out", UNIT_THAT_IS_OUT));
  }

  static OwnHouse stand() {
    return new OwnHouse();
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
    return names;
  }

  @Override
  public Call uponItsOwn(Api.Operation operation, Call call) {
    return switch (operation.id()) {
      case "postHold" -> {
        HeldKit kit = new HeldKit();
        kit.wanted();
        yield call.renamed(Map.of(held.house(), kit.house(), reference, next(reference)));
      }
      case "confirmHold", "releaseHold" -> step(call, TENTATIVE, "tentative");
      case "extendHold", "checkOutHold" -> step(call, CONFIRMED, "confirmed");
      case "checkInHold" -> step(call, OUT, "out");
      case "retireUnit" -> {
        String serial = next("QS");
        HeldKit.unit(told, serial, "boathouse/sdc-omni-1");
        yield call.renamed(Map.of(TOLD_UNIT, serial));
      }
      case "withdrawHousePack" -> {
        String pack = next(told);
        Kit.sql(
            "insert into pack (id, house, files) values (?, ?, ?::jsonb)",
            pack,
            told,
            PACK.formatted(pack));
        yield call.renamed(Map.of(TOLD_PACK.replace(TOLD, told), pack));
      }
      default -> call;
    };
  }

  /** The same step with a hold of one unit that nobody else asks for. */
  private Call step(Call call, String example, String state) {
    String serial = held.unit(next("G"), "boathouse/sdc-card-1");
    String hold = held.hold(state, serial);
    return call.renamed(Map.of(names.get(example), hold, UNIT_THAT_IS_OUT, serial));
  }

  private String next(String name) {
    return name + "-" + count.incrementAndGet();
  }
}
