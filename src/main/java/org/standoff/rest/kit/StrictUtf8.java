package org.standoff.rest.kit;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;

/**
 * Reads UTF-8 and gives all characters before the first byte that is none, so that who reads knows
 * where that is. A byte order mark at the start is left out.
 */
final class StrictUtf8 extends Reader {

  private static final int BUFFER_BYTES = 1 << 16;
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final InputStream in;
  private final CharsetDecoder decoder =
      UTF_8
          .newDecoder()
          .onMalformedInput(CodingErrorAction.REPORT)
          .onUnmappableCharacter(CodingErrorAction.REPORT);
  private final ByteBuffer bytes = ByteBuffer.allocate(BUFFER_BYTES).flip();
  private boolean ended;
  private boolean begun;

  StrictUtf8(InputStream in) {
    this.in = in;
  }

  /**
   * @throws CharacterCodingException at the first byte that is no UTF-8
   */
  @Override
  public int read(char[] into, int offset, int length) throws IOException {
    CharBuffer chars = CharBuffer.wrap(into, offset, length).slice();
    while (chars.position() == 0) {
      CoderResult result = decoder.decode(bytes, chars, ended);
      if (result.isError()) {
        if (chars.position() > 0) {
          break;
        }
        result.throwException();
      }
      if (chars.position() == 0) {
        if (ended) {
          return -1;
        }
        fill();
      } else if (!begun) {
        begun = true;
        if (into[offset] == BYTE_ORDER_MARK) {
          chars.flip().position(1);
          chars.compact();
        }
      }
    }
    return chars.position();
  }

  private void fill() throws IOException {
    bytes.compact();
    int read = in.read(bytes.array(), bytes.position(), bytes.remaining());
    if (read < 0) {
      ended = true;
    } else {
      bytes.position(bytes.position() + read);
    }
    bytes.flip();
  }

  @Override
  public void close() throws IOException {
    in.close();
  }
}
