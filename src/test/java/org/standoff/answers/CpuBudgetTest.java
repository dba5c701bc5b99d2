package org.standoff.answers;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.api.Test;

class CpuBudgetTest {
  private final CpuBudget budget = new CpuBudget();

  @Test
  void estimatesAddUpToWhatARequestMayTakeAndNoFurther() {
    budget.take(6_000);
    budget.take(4_000);
    TooCostly refused = catchThrowableOfType(TooCostly.class, () -> budget.take(0.2));
    assertThat(refused.cost()).isEqualTo(new CpuCost(1, 0, 10_000));
  }

  @Test
  void whatIsRefusedTakesNothingFromWhatIsLeft() {
    budget.take(6_000.5);
    TooCostly refused = catchThrowableOfType(TooCostly.class, () -> budget.take(5_000.2));
    assertThat(refused.cost()).isEqualTo(new CpuCost(5_001, 3_999, 10_000));
    assertThat(refused)
        .hasMessage(
            "This would take about 5001 ms of CPU time, and 3999 of 10000 ms are left to the"
                + " request.");
    budget.take(3_999);
  }
}
