package org.standoff.kit.event;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class EventCursorTest {

  @Test
  void itReadsWhatItWrites() {
    EventCursor cursor = new EventCursor("4294967296", 17);
    assertThat(cursor.text()).isEqualTo("4294967296-17");
    assertThat(EventCursor.parse("4294967296-17")).contains(cursor);
    assertThat(EventCursor.parse("0-0")).contains(EventCursor.START);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "1",
        "1-",
        "-1",
        "01-1",
        "1-01",
        "1-1 ",
        "a-1",
        "1-1-1",
        "9999999999999999999-1"
      })
  void anythingElseIsNone(String text) {
    assertThat(EventCursor.parse(text)).isEmpty();
  }
}
