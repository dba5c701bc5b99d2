package org.standoff.rest.http;

import io.netty.util.NetUtil;
import io.vertx.core.net.SocketAddress;
import java.util.Arrays;
import java.util.HexFormat;
import org.jspecify.annotations.Nullable;

/**
 * Where a caller is counted: its IPv4 address, or the first 64 bits of its IPv6 address. Of those
 * anybody has a whole network (RFC 6177), and could be a new caller with every request.
 */
final class CallerNetwork {

  private static final int NETWORK_BYTES = 8;
  private static final int IPV6_BYTES = 16;

  /** What an IPv4 address begins with where it is written as an IPv6 one (RFC 4291, 2.5.5.2). */
  private static final byte[] MAPPED = {0, 0, 0, 0, 0, 0, 0, 0, 0, 0, -1, -1};

  private CallerNetwork() {}

  /** The network; a name that is no address, which a proxy may forward, stands for itself. */
  static String of(SocketAddress caller) {
    String address = caller.hostAddress();
    String text = address == null ? String.valueOf(caller.host()) : address;
    byte @Nullable [] bytes = NetUtil.createByteArrayFromIpAddressString(text);
    if (bytes == null) {
      return text;
    }
    int begin = isMapped(bytes) ? MAPPED.length : 0;
    int end = bytes.length == IPV6_BYTES && begin == 0 ? NETWORK_BYTES : bytes.length;
    return HexFormat.of().formatHex(bytes, begin, end);
  }

  private static boolean isMapped(byte[] address) {
    return address.length == IPV6_BYTES
        && Arrays.equals(address, 0, MAPPED.length, MAPPED, 0, MAPPED.length);
  }
}
