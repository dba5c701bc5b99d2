package org.standoff.rest.http;

import io.netty.handler.codec.compression.StandardCompressionOptions;
import io.netty.handler.codec.http.HttpContentCompressor;
import io.vertx.core.http.HttpVersion;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** How an answer is compressed on its way (RFC 9110, 8.4.1): another representation of it. */
enum ContentCoding {
  GZIP,
  DEFLATE;

  private static final Choice CHOICE = new Choice();

  /**
   * The coding that the server below will send an answer in, if any, by what the caller takes.
   * HTTP/1.0 never has one.
   */
  static Optional<ContentCoding> of(HttpVersion version, @Nullable String acceptEncoding) {
    return Optional.ofNullable(acceptEncoding)
        .filter(any -> version != HttpVersion.HTTP_1_0)
        .map(CHOICE::determineEncoding)
        .map(name -> valueOf(name.toUpperCase(Locale.ROOT)));
  }

  /** The name of the coding, as headers have it. */
  String token() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** The server's own: it compresses later than tags are made, and does not tell beforehand. */
  private static final class Choice extends HttpContentCompressor {

    Choice() {
      super(StandardCompressionOptions.gzip(), StandardCompressionOptions.deflate());
    }

    @Override
    protected String determineEncoding(String acceptEncoding) {
      return super.determineEncoding(acceptEncoding);
    }
  }
}
