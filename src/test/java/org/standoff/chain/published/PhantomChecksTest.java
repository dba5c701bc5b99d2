package org.standoff.chain.published;

import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import org.standoff.chain.Phantom;
import org.standoff.fixture.CheckTable;

/** Topic N, phantom: P48 of IEC 61938; sources stand in each row. */
class PhantomChecksTest {
  @TestFactory
  Stream<DynamicTest> phantom() {
    return CheckTable.ofTopics("N-phantom")
        .row("N13", Phantom::shortCircuitMa)
        .row("N14", () -> Phantom.pinVolts(4))
        .row("N15", () -> Phantom.TOLERANCE_V)
        .notHere("N16", "a caution of an answer: checked where settings are advised")
        .tests();
  }
}
