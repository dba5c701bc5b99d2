package org.standoff.kit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import io.quarkus.test.common.TestResourceScope;
import io.quarkus.test.common.WithTestResource;
import io.quarkus.test.junit.QuarkusTest;
import jakarta.inject.Inject;
import java.util.ArrayList;
import java.util.List;
import javax.sql.DataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.standoff.fixture.EmbeddedDatabaseResource;

@QuarkusTest
@WithTestResource(value = EmbeddedDatabaseResource.class, scope = TestResourceScope.GLOBAL)
class TransactionTimesTest {
  private final List<Long> told = new ArrayList<>();

  @Inject DataSource dataSource;
  @Inject SchemaMigration migration;
  private Transactions transactions;

  @BeforeEach
  void listen() {
    await().until(migration::isDone);
    transactions = new Transactions(dataSource, migration, told::add);
  }

  @Test
  void aTransactionWithinAnotherIsCountedWithIt() {
    transactions.run(() -> transactions.statements(open -> transactions.run(() -> 1)));
    assertThat(told).singleElement().satisfies(nanos -> assertThat(nanos).isPositive());
  }

  @Test
  void oneAfterTheOtherAreCountedBoth() {
    transactions.run(() -> 1);
    transactions.run(() -> 2);
    assertThat(told).hasSize(2);
  }

  @Test
  void oneThatIsTakenBackIsCountedToo() {
    assertThatThrownBy(
            () ->
                transactions.run(
                    () -> {
                      throw new IllegalStateException("taken back");
                    }))
        .hasMessage("taken back");
    assertThat(told).hasSize(1);
  }
}
