package org.standoff.kit.hold;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.standoff.kit.hold.OwnKit.line;
import static org.standoff.kit.hold.OwnKit.period;
import static org.standoff.kit.hold.OwnKit.wish;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.Supposing;
import org.standoff.kit.Caller;

class IdempotencyTest {

  private static final Caller DESK = Callers.desk("north-desk");
  private static final Caller OTHER = Callers.desk("south-desk");
  private static final WantedLine ONE = line("quay", "core/a", 1);

  private OwnKit kit;

  @BeforeEach
  void setUp() {
    kit = new OwnKit();
    kit.house("quay", Duration.ofHours(1));
    kit.units("quay", "core/a", 2);
  }

  @AfterEach
  void tearDown() {
    kit.close();
  }

  private static Retry retry(String key, String body) {
    return new Retry(
        key, body.getBytes(StandardCharsets.UTF_8), hold -> hold.reference() + " " + hold.state());
  }

  @Test
  void theSameKeyAndBodyHaveTheSameAnswerAndMakeOneHold() {
    HoldWish wanted = wish("r", period(1, 2), ONE);
    Receipt first = kit.service.holds.holdOnce(DESK, wanted, retry("k", "body"));
    kit.service.desk.confirm(DESK, first.hold(), Supposing.NOTHING);
    Receipt again = kit.service.holds.holdOnce(DESK, wanted, retry("k", "body"));
    assertThat(again).isEqualTo(first);
    assertThat(again.answer()).as("the first answer, whatever became of it").contains("TENTATIVE");
    assertThat(kit.database.count("select count(*) from hold")).isEqualTo(1);
  }

  @Test
  void theSameKeyWithAnotherBodyIsRefused() {
    kit.service.holds.holdOnce(DESK, wish("r", period(1, 2), ONE), retry("k", "body"));
    assertThatThrownBy(
            () ->
                kit.service.holds.holdOnce(
                    DESK, wish("s", period(1, 2), ONE), retry("k", "other body")))
        .isInstanceOf(KeyReused.class);
  }

  @Test
  void aKeyIsOfItsCallerAlone() {
    Receipt first =
        kit.service.holds.holdOnce(DESK, wish("r", period(1, 2), ONE), retry("k", "body"));
    Receipt other =
        kit.service.holds.holdOnce(OTHER, wish("r", period(1, 2), ONE), retry("k", "other body"));
    assertThat(other.hold()).isNotEqualTo(first.hold());
  }

  @Test
  void aKeyWhoseRequestFailedIsStillGood() {
    Hold before = kit.hold(OTHER, wish("before", period(1, 2), line("quay", "core/a", 2)));
    HoldWish wanted = wish("r", period(1, 2), ONE);
    assertThatThrownBy(() -> kit.service.holds.holdOnce(DESK, wanted, retry("k", "body")))
        .isInstanceOf(Shortage.class);
    kit.service.desk.release(OTHER, before.id(), Supposing.NOTHING);
    assertThat(kit.service.holds.holdOnce(DESK, wanted, retry("k", "body")).answer())
        .contains("TENTATIVE");
  }

  @Test
  void whileARequestRunsItsKeyIsBusy() throws Exception {
    try (Connection running = kit.database.connect()) {
      running.setAutoCommit(false);
      IdempotencyKeys.claim(running, "north-desk", retry("k", "body"));
      assertThatThrownBy(
              () ->
                  kit.service.holds.holdOnce(
                      DESK, wish("r", period(1, 2), ONE), retry("k", "body")))
          .isInstanceOf(KeyBusy.class);
      running.rollback();
    }
    assertThat(
            kit.service
                .holds
                .holdOnce(DESK, wish("r", period(1, 2), ONE), retry("k", "body"))
                .hold())
        .isNotNull();
  }

  @Test
  void aDayLaterTheKeyIsForgotten() {
    kit.service.holds.holdOnce(DESK, wish("r", period(1, 2), ONE), retry("k", "body"));
    kit.clockAt(Duration.ofHours(24).minusMillis(1));
    assertThatThrownBy(
            () ->
                kit.service.holds.holdOnce(
                    DESK, wish("s", period(25, 26), ONE), retry("k", "other body")))
        .isInstanceOf(KeyReused.class);
    kit.clockAt(Duration.ofHours(24));
    kit.service.holds.holdOnce(DESK, wish("s", period(25, 26), ONE), retry("k", "other body"));
    assertThat(kit.database.count("select count(*) from idempotency_key")).isEqualTo(1);
  }

  @Test
  void manyEqualRequestsAtOnceMakeOneHoldAndAreToldTheSame() throws Exception {
    HoldWish wanted = wish("r", period(1, 2), ONE);
    Callable<Optional<Receipt>> request =
        () -> {
          try {
            return Optional.of(kit.service.holds.holdOnce(DESK, wanted, retry("k", "body")));
          } catch (KeyBusy busy) {
            return Optional.empty();
          }
        };
    ExecutorService threads = Executors.newFixedThreadPool(6);
    try {
      List<Future<Optional<Receipt>>> answers =
          threads.invokeAll(IntStream.range(0, 50).mapToObj(any -> request).toList());
      Receipt known = request.call().orElseThrow();
      int answered = 0;
      for (Future<Optional<Receipt>> answer : answers) {
        if (answer.get().isPresent()) {
          assertThat(answer.get()).contains(known);
          answered++;
        }
      }
      assertThat(answered).isPositive();
    } finally {
      threads.shutdownNow();
    }
    assertThat(kit.database.count("select count(*) from hold")).isEqualTo(1);
    assertThat(kit.database.rows("select key from idempotency_key", row -> row.getString(1)))
        .containsExactly("k");
  }
}
