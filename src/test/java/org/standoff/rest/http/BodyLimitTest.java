package org.standoff.rest.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;
import org.standoff.rest.problem.BodyTooLarge;
import org.standoff.rest.problem.BodyTooSlow;

class BodyLimitTest {

  private static final long SECOND = 1_000_000_000L;

  private final AtomicLong now = new AtomicLong();

  @Test
  void aBodyOfTheLimitIsReadAndOneByteMoreIsNot() throws IOException {
    assertThat(BodyLimit.read(new ByteArrayInputStream(new byte[BodyLimit.BYTES])))
        .hasSize(BodyLimit.BYTES);
    InputStream more = new ByteArrayInputStream(new byte[BodyLimit.BYTES + 1]);
    assertThatThrownBy(() -> BodyLimit.read(more)).isInstanceOf(BodyTooLarge.class);
  }

  @Test
  void aBodyThatDripsIsReadForAMinuteAndNoLonger() throws IOException {
    InputStream body = BodyLimit.bounded(new Dripping(), 1_000, now::get);
    for (int second = 1; second <= 60; second++) {
      assertThat(body.read(new byte[100])).isEqualTo(1);
    }
    assertThatThrownBy(() -> body.read(new byte[100])).isInstanceOf(BodyTooSlow.class);
  }

  /** A byte a second, by the test's own clock. */
  private final class Dripping extends InputStream {
    @Override
    public int read() {
      now.addAndGet(SECOND);
      return 'x';
    }

    @Override
    public int read(byte[] into, int offset, int length) {
      into[offset] = (byte) read();
      return 1;
    }
  }
}
