package org.standoff.kit.free;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

class LotsTest {

  @Test
  void singleUnitsFillUpWhatWholeGroupsLeaveOpen() {
    Lots lots = new Lots(1, List.of(2, 2, 3));
    // 1; 2; 1+2 or 3; 2+2 or 1+3; 2+3 or 1+2+2; ...; all are 8
    for (int quantity = 1; quantity <= 8; quantity++) {
      assertThat(lots.most(quantity)).as("%d", quantity).isEqualTo(quantity);
    }
    assertThat(lots.most(9)).isEqualTo(8);
  }

  @Test
  void aQuantityBetweenGroupsIsRoundedDown() {
    Lots lots = new Lots(0, List.of(4, 4));
    assertThat(lots.most(3)).isZero();
    assertThat(lots.most(7)).isEqualTo(4);
    assertThat(lots.meet(new WantedLine("omni", 4, false))).isTrue();
    assertThat(lots.meet(new WantedLine("omni", 3, false))).isFalse();
  }

  @Test
  void linesOfOneModelShareWhatIsThere() {
    Lots lots = new Lots(1, List.of(2, 2));
    WantedLine pair = new WantedLine("omni", 2, true);
    assertThat(lots.meet(List.of(pair, pair, new WantedLine("omni", 1, false)))).isTrue();
    assertThat(lots.meet(List.of(pair, pair, new WantedLine("omni", 2, false)))).isFalse();
    assertThat(lots.meet(List.of(pair, pair, pair))).isFalse();
    // one pair apart from the two that a line each wants
    assertThat(lots.meet(List.of(new WantedLine("omni", 1, false), pair))).isTrue();
  }

  @Test
  void aMatchedLineWantsAGroupOfJustItsSize() {
    Lots lots = new Lots(5, List.of(2, 4));
    assertThat(lots.meet(new WantedLine("omni", 4, true))).isTrue();
    assertThat(lots.meet(new WantedLine("omni", 3, true))).isFalse();
    assertThat(lots.meet(new WantedLine("omni", 5, true))).isFalse();
  }
}
