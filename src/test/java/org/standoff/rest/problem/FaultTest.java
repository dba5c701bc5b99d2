package org.standoff.rest.problem;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class FaultTest {

  private final Fault fault = Fault.atPointer("/a", FaultCode.WRONG_FORM, "Wrong.");

  @Test
  void whatWasFoundIsCutAfterEightyCharacters() {
    assertThat(fault.found("x".repeat(80)).found()).hasSize(80).doesNotContain("…");
    assertThat(fault.found("x".repeat(81)).found()).hasSize(80).endsWith("x…");
  }

  @Test
  void halfASurrogatePairIsNeverTold() {
    assertThat(fault.found("a\uD83C").found()).isEqualTo("a?");
    assertThat(fault.found("x".repeat(78) + "\uD83C\uDFB8" + "y").found())
        .isEqualTo("x".repeat(78) + "?…");
  }
}
