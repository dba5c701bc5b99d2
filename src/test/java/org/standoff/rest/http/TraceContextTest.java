package org.standoff.rest.http;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.NullSource;
import org.junit.jupiter.params.provider.ValueSource;

class TraceContextTest {

  private static final String TRACE = "4bf92f3577b34da6a3ce929d0e0e4736";

  @ParameterizedTest
  @ValueSource(
      strings = {
        "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01",
        "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-00",
        "01-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01-more"
      })
  void aTraceIsReadFromItsHeader(String header) {
    assertThat(TraceContext.traceId(header)).contains(TRACE);
  }

  @ParameterizedTest
  @NullSource
  @ValueSource(
      strings = {
        "",
        "00-4BF92F3577B34DA6A3CE929D0E0E4736-00f067aa0ba902b7-01",
        "ff-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01",
        "00-00000000000000000000000000000000-00f067aa0ba902b7-01",
        "00-4bf92f3577b34da6a3ce929d0e0e4736-0000000000000000-01",
        "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7-01-more",
        "00-4bf92f3577b34da6a3ce929d0e0e4736-00f067aa0ba902b7"
      })
  void whatIsNoTraceIsPassedOver(String header) {
    assertThat(TraceContext.traceId(header)).isEmpty();
  }

  @Test
  void aLineBreakDoesNotReachTheLog() {
    assertThat(TraceContext.traceId("00-" + TRACE + "-00f067aa0ba902b7-01\nforged")).isEmpty();
  }
}
